package org.layshaft.engine.fit;

/**
 * Two places of a box that meet.
 *
 * @param one id of a place
 * @param other id of the place it meets
 */
public record Meeting(MeetingKind kind, String one, String other) {}
