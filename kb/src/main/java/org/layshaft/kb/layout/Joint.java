package org.layshaft.kb.layout;

/**
 * What makes two shafts turn as one: a propeller shaft with its joints, or two flanges.
 *
 * @param from id of the shaft that it is on the rear end of
 * @param to id of the shaft that it is on the front end of
 */
public record Joint(Named named, String from, String to) implements Part {
    @Override
    public PartKind kind() {
        return PartKind.JOINT;
    }
}
