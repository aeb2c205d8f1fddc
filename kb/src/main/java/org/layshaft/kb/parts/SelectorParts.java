package org.layshaft.kb.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.layshaft.kb.layout.Detent;
import org.layshaft.kb.layout.Fork;
import org.layshaft.kb.layout.InterlockKind;
import org.layshaft.kb.layout.Rail;
import org.layshaft.kb.typed.Reference;
import org.layshaft.kb.typed.TypedLayout;
import org.layshaft.kb.typed.TypedLever;
import org.layshaft.kb.typed.TypedMember;
import org.layshaft.kb.typed.TypedRail;
import org.layshaft.kb.typed.TypedSelector;

/** The rails with their detents, the forks on them, and the interlock between them. */
final class SelectorParts {
    private SelectorParts() {}

    static void add(TypedLayout layout, PartLedger ledger) {
        addRails(layout.selector(), layout, ledger);
        InterlockParts.add(layout.selector(), ledger);
        for (TypedLever lever : layout.levers()) {
            addRails(lever.selector(), layout, ledger);
            if (lever.selector().interlock() != InterlockKind.NONE) {
                InterlockParts.add(lever.selector(), ledger);
            }
        }
    }

    private static void addRails(TypedSelector selector, TypedLayout layout, PartLedger ledger) {
        for (TypedRail rail : selector.rails()) {
            List<TypedMember> moved = moved(rail, layout);
            String words = DefaultNames.words(rail.base());
            ledger.add(
                    new Rail(
                            ledger.named(rail.id(), words + " rail", rail.naming()),
                            moved.stream().map(SelectorParts::fork).toList()),
                    rail.pointer());
            ledger.add(new Detent(ledger.named(rail.base() + "-detent", words + " detent"), rail.id()), rail.pointer());
            for (TypedMember member : moved) {
                String name = DefaultNames.words(member.base()) + " fork";
                ledger.add(new Fork(ledger.named(fork(member), name), member.id(), rail.id()), rail.pointer());
            }
        }
    }

    private static List<TypedMember> moved(TypedRail rail, TypedLayout layout) {
        List<TypedMember> moved = new ArrayList<>();
        for (Reference base : rail.moves()) {
            Optional<TypedMember> member = layout.members().stream()
                    .filter(one -> one.base().equals(base.id()))
                    .findFirst();
            member.ifPresent(moved::add);
        }
        return moved;
    }

    private static String fork(TypedMember member) {
        return member.base() + "-fork";
    }
}
