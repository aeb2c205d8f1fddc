package org.layshaft.engine.fit;

import java.util.Optional;

/**
 * One thing that must be so where two places of a box meet. Found by {@link java.util.ServiceLoader}; a class each. Its
 * page of explanation is the resource {@code <id>.md} beside it.
 *
 * <p>Thread-safe, without state. A table asks it millions of times: it does no more than it must, and leaves words to
 * later. It looks no further than the places that have a bearing on the meeting, since what it says is remembered for as
 * long as the same parts stand there; only where {@link MeetingKind#TOGETHER} is its subject may it look anywhere.
 */
public interface FitCheck {
    /** What it is known by: {@code normal-module}. */
    String id();

    /** As a heading, without a full stop: {@code Normal module}. */
    String title();

    /** Where it looks. */
    MeetingKind meeting();

    /** Those that only compare come before those that reckon. */
    default boolean reckons() {
        return false;
    }

    /** What it says; empty where there is nothing here that it could look at, as no hand on straight-cut teeth. */
    Optional<Judgement> judge(Judging judging);
}
