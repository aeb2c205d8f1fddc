package org.layshaft.web.asking.answering;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.BlockingRing;
import org.layshaft.kb.layout.ClutchingTeeth;
import org.layshaft.kb.layout.Fork;
import org.layshaft.kb.layout.Gear;
import org.layshaft.kb.layout.Hub;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.layout.Part;
import org.layshaft.kb.layout.PartKind;
import org.layshaft.kb.layout.Rail;
import org.layshaft.kb.layout.Shaft;
import org.layshaft.kb.layout.Side;
import org.layshaft.kb.words.Term;
import org.layshaft.kb.words.Words;
import org.layshaft.web.asking.Question;
import org.layshaft.web.asking.Saying;
import org.layshaft.web.asking.Sides;

/** What words mean and parts are for, where they are, how many teeth they have, and which gear a sleeve engages. */
final class WordsComposer {
    private static final int MOST_NAMED = 12;

    private final Facts facts;
    private final Words words;
    private final Layout layout;

    WordsComposer(Facts facts, Words words) {
        this.facts = facts;
        this.words = words;
        this.layout = facts.box().layout();
    }

    Composed meaning(Question.Meaning question) {
        List<String> says = new ArrayList<>();
        List<String> parts = new ArrayList<>();
        for (String name : question.terms()) {
            Term term = Optional.ofNullable(words.terms().get(name)).orElseThrow();
            says.add("%s: %s".formatted(Saying.sentence(term.name()), term.means()));
            if (!term.also().isEmpty()) {
                says.add("Also called: %s.".formatted(String.join(", ", term.also())));
            }
            List<String> here = here(term);
            parts.addAll(here);
            says.addAll(where(term, here));
        }
        return Composed.of(says).aboutParts(parts);
    }

    private List<String> where(Term term, List<String> here) {
        if (here.isEmpty()) {
            return List.of();
        }
        String more = here.size() > MOST_NAMED ? ", and %d more".formatted(here.size() - MOST_NAMED) : "";
        return List.of("In %s: %s%s."
                .formatted(
                        layout.name(),
                        facts.names().list(here.stream().limit(MOST_NAMED).toList()),
                        more));
    }

    /** Parts of that kind, or that have one of its names in theirs. */
    private List<String> here(Term term) {
        String kind = term.name().replace(' ', '-');
        List<String> ofKind = layout.parts().values().stream()
                .filter(part -> part.kind().word().equals(kind))
                .map(Part::id)
                .toList();
        if (!ofKind.isEmpty() && !kind.equals("gear")) {
            return ofKind;
        }
        return layout.parts().values().stream()
                .filter(part -> part.name().toLowerCase(Locale.ROOT).endsWith(term.name()))
                .filter(part -> !kind.equals("gear") || part instanceof Gear)
                .map(Part::id)
                .toList();
    }

    Composed whatFor(Question.WhatFor question) {
        Part part = layout.the(Part.class, question.part());
        List<String> says = new ArrayList<>();
        meaningOf(part)
                .ifPresent(means -> says.add(
                        part.name().equalsIgnoreCase(means.name())
                                ? "%s: %s"
                                        .formatted(Saying.sentence(facts.names().the(part.id())), lower(means.means()))
                                : "%s is a %s: %s"
                                        .formatted(
                                                Saying.sentence(facts.names().the(part.id())),
                                                means.name(),
                                                lower(means.means()))));
        place(part).ifPresent(says::add);
        List<String> engages = Stream.of(Side.values())
                .flatMap(side -> Sides.gearAt(facts.box(), part.id(), side.word()).stream())
                .distinct()
                .toList();
        boolean moved = part instanceof Fork || part instanceof Hub || part.kind() == PartKind.SLEEVE;
        List<String> carrying = facts.box().gears().stream()
                .filter(gear -> gear.motion().carrying().contains(part.id()))
                .map(Box.DerivedGear::name)
                .toList();
        if (moved && !engages.isEmpty()) {
            says.add("It serves %s.".formatted(Saying.gears(engages)));
        } else if (!carrying.isEmpty()) {
            says.add("It carries the power in %s.".formatted(Saying.gears(carrying)));
        } else if (part instanceof BlockingRing ring) {
            says.add("It serves %s, on the way in only; it carries no power."
                    .formatted(facts.names().the(ring.gear())));
        }
        if (says.isEmpty()) {
            says.add("What %s is for is not stated.".formatted(facts.names().the(part.id())));
        }
        return Composed.of(says).aboutParts(List.of(part.id()));
    }

    private Optional<Term> meaningOf(Part part) {
        String kind = part.kind().word().replace('-', ' ');
        String name = part.name().toLowerCase(Locale.ROOT);
        return words.terms().values().stream()
                .filter(term -> !term.means().isEmpty())
                .filter(term -> name.endsWith(term.name()) || kind.equals(term.name()))
                .max((one, other) -> Integer.compare(fit(one, name), fit(other, name)));
    }

    /** A name that the part's own ends with says more than its kind. */
    private static int fit(Term term, String name) {
        return (name.endsWith(term.name()) ? 100 : 0) + term.name().length();
    }

    private Optional<String> place(Part part) {
        Optional<String> on = layout.all(Shaft.class)
                .filter(shaft -> shaft.along().contains(at(part)))
                .map(Shaft::id)
                .findFirst();
        return on.map(shaft -> {
            List<String> along = layout.shaft(shaft).along();
            int index = along.indexOf(at(part));
            List<String> beside = Stream.of(index - 1, index + 1)
                    .filter(next -> next >= 0 && next < along.size())
                    .map(along::get)
                    .toList();
            return "It sits on %s%s."
                    .formatted(
                            facts.names().the(shaft),
                            beside.isEmpty() ? "" : ", beside " + facts.names().list(beside));
        });
    }

    private static String at(Part part) {
        if (part instanceof BlockingRing ring) {
            return ring.gear();
        }
        return part instanceof Hub hub ? hub.sleeve() : part.id();
    }

    private static String lower(String sentence) {
        return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
    }

    Composed teeth(Question.TeethOf question) {
        List<Gear> gears = question.parts().isEmpty()
                ? layout.all(Gear.class).toList()
                : question.parts().stream()
                        .flatMap(part -> layout.find(Gear.class, part).stream())
                        .toList();
        List<String> says = new ArrayList<>();
        gears.forEach(gear -> says.add(
                "%s has %d teeth.".formatted(Saying.sentence(facts.names().the(gear.id())), gear.teeth())));
        question.parts().stream()
                .filter(part -> layout.find(Gear.class, part).isEmpty())
                .forEach(part -> says.add("%s is no gear; its teeth are not stated."
                        .formatted(Saying.sentence(facts.names().the(part)))));
        return Composed.of(says).aboutParts(question.parts());
    }

    Composed whichGear(Question.WhichGear question) {
        List<String> sides = question.side().map(List::of).orElse(List.of("front", "rear"));
        List<String> moved = question.part()
                .map(this::moving)
                .orElseGet(() ->
                        layout.members().stream().map(member -> member.part()).toList());
        List<String> says = new ArrayList<>();
        for (String part : moved) {
            for (String side : sides) {
                says.add(Sides.gearAt(facts.box(), part, side)
                        .map(gear -> "With %s to the %s it is %s."
                                .formatted(facts.names().the(part), side, Names.gearName(gear)))
                        .orElse("%s engages nothing to the %s."
                                .formatted(Saying.sentence(facts.names().the(part)), side)));
            }
        }
        says.add("The front is the end of the engine and the clutch.");
        return Composed.of(says).aboutParts(moved);
    }

    private List<String> moving(String part) {
        Optional<Rail> rail = layout.find(Rail.class, part);
        if (rail.isPresent()) {
            return rail.get().forks().stream()
                    .map(fork -> layout.the(Fork.class, fork).member())
                    .toList();
        }
        Part moved = layout.the(Part.class, part);
        if (moved instanceof Fork fork) {
            return List.of(fork.member());
        }
        return moved instanceof ClutchingTeeth teeth ? List.of(teeth.sleeve()) : List.of(part);
    }
}
