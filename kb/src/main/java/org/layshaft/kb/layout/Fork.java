package org.layshaft.kb.layout;

/**
 * A fork, fast on its rail.
 *
 * @param member id of the sleeve or sliding gear it moves
 * @param rail id of the rail that carries it
 */
public record Fork(Named named, String member, String rail) implements Part {
    @Override
    public PartKind kind() {
        return PartKind.FORK;
    }
}
