package org.layshaft.web.desk;

import static org.layshaft.web.desk.BadInputException.Kind.MALFORMED;
import static org.layshaft.web.desk.BadInputException.Kind.MISSING;
import static org.layshaft.web.desk.BadInputException.Kind.NOT_UNDERSTOOD;
import static org.layshaft.web.desk.BadInputException.Kind.UNFIT;
import static org.layshaft.web.desk.BadInputException.Kind.UNKNOWN;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.Reasoners;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Diagnostician;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.api.UnanswerableException;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.web.asking.Answer;
import org.layshaft.web.asking.Asking;
import org.layshaft.web.asking.FaultNaming;
import org.layshaft.web.asking.FaultUnderstanding;
import org.layshaft.web.asking.Question;
import org.layshaft.web.asking.Understanding;
import org.layshaft.web.asking.Understanding.Ambiguous;
import org.layshaft.web.asking.Understanding.Declined;
import org.layshaft.web.asking.Understanding.NotUnderstood;
import org.layshaft.web.asking.Understanding.Reading;
import org.layshaft.web.asking.Understanding.Understood;

/**
 * Takes in what somebody wrote and answers it. Thread-safe.
 *
 * <p>Every method throws {@link BadInputException} where what was written cannot be used.
 */
public final class Desk {
    private static final int LONGEST_QUESTION = 500;
    private static final int MOST_FAULTS = 8;

    private final KnowledgeBase knowledge;
    private final Reasoner reasoner;
    private final Diagnostician diagnostician;
    private final Asking asking;
    private final PartsDesk parts;

    private Desk(KnowledgeBase knowledge, Reasoner reasoner) {
        this.knowledge = knowledge;
        this.reasoner = reasoner;
        this.diagnostician = Reasoners.diagnostician(knowledge, reasoner);
        this.parts = new PartsDesk(knowledge);
        this.asking = new Asking(knowledge, reasoner, diagnostician, new PartsSayings(parts));
    }

    /** A desk with all that is known; slow, because it makes the reasoner ready. */
    public static Desk over(KnowledgeBase knowledge) {
        return new Desk(knowledge, new RememberingReasoner(Reasoners.standard(knowledge)));
    }

    public KnowledgeBase knowledge() {
        return knowledge;
    }

    public Layout layout(String id) {
        return LayoutFinder.find(knowledge, id);
    }

    public Box box(Layout layout) {
        return reasoner.box(layout);
    }

    /** What the parts of a layout are called, and the pieces of a shaft that is cut. */
    public Names names(Layout layout) {
        return new Names(layout, knowledge.words());
    }

    /** How faults of a layout are put in words. */
    public FaultNaming faultWords(Layout layout) {
        return new FaultNaming(knowledge, box(layout));
    }

    /** The name of a gear, as derived, where this is one. */
    public String gear(Layout layout, String name) {
        List<String> names =
                box(layout).gears().stream().map(Box.DerivedGear::name).toList();
        return names.stream()
                .filter(name::equalsIgnoreCase)
                .findFirst()
                .orElseThrow(() -> new BadInputException(
                        UNKNOWN,
                        "%s has no gear \"%s\". Its gears are %s."
                                .formatted(layout.name(), name, String.join(", ", names)),
                        names));
    }

    /** Faults as written: {@code 3-4-fork bent side=front}, or in plain words. */
    public List<Fault> faults(Layout layout, List<String> written) {
        if (written.size() > MOST_FAULTS) {
            throw new BadInputException(
                    MALFORMED,
                    "%d faults are supposed at once. Suppose at most %d.".formatted(written.size(), MOST_FAULTS));
        }
        return written.stream()
                .flatMap(each -> faults(layout, each).stream())
                .distinct()
                .toList();
    }

    private List<Fault> faults(Layout layout, String written) {
        requireShort("fault", written);
        if (written.isBlank()) {
            throw new BadInputException(
                    MISSING, "A fault is given without words. Write the part and how it failed: \"3-4-fork bent\".");
        }
        FaultUnderstanding understanding = asking.understandFaults(layout, written);
        if (understanding instanceof FaultUnderstanding.Problem problem) {
            throw new BadInputException(UNKNOWN, problem.says(), problem.nearest());
        }
        return ((FaultUnderstanding.Faults) understanding).faults();
    }

    /** Where one goes back from what is noticed to what may be wrong. */
    public DiagnosisDesk diagnosis() {
        return new DiagnosisDesk(diagnostician, asking);
    }

    /** Where sleeves are moved by hand. */
    public HandDesk hand() {
        return new HandDesk(reasoner);
    }

    /** Where parts are asked about. */
    public PartsDesk parts() {
        return parts;
    }

    /** Where changes are tried; nothing that is tried is remembered. */
    public SwapDesk swaps() {
        return new SwapDesk(parts);
    }

    /** Which gears still work with these faults. */
    public Answer gearsLeft(Layout layout, List<Fault> faults) {
        return answer(new Question.GearsLeft(layout.id(), faults, List.of()));
    }

    /**
     * What is made of a question.
     *
     * @param layout what the question is about, unless it names another
     */
    public Understanding understand(Optional<Layout> layout, String words) {
        requireShort("question", words);
        if (words.isBlank()) {
            throw new BadInputException(
                    MISSING,
                    "The question is empty. Ask something like \"which gears still work if the 3-4 fork is bent\".");
        }
        return asking.understand(layout.map(Layout::id), words);
    }

    /**
     * A question that follows another, put so that it stands alone; the words themselves where they need none.
     *
     * @param before the question before; empty for none
     */
    public String standingAlone(Optional<Layout> layout, String words, Optional<String> before) {
        requireShort("question", words);
        before.ifPresent(asked -> requireShort("question before", asked));
        return before.filter(asked -> !asked.isBlank() && !words.isBlank())
                .map(asked -> asking.standingAlone(layout.map(Layout::id), words, asked))
                .orElse(words);
    }

    /** Whole questions that begin as somebody types, likeliest first. */
    public List<String> completions(Optional<Layout> layout, String begun) {
        requireShort("question", begun);
        return asking.completions(layout.map(Layout::id), begun);
    }

    /**
     * The answer to a question that must be clear.
     *
     * @param faults what is supposed besides what the question supposes
     */
    public Asked ask(Optional<Layout> layout, List<String> faults, String words) {
        Understanding understanding = understand(layout, words);
        if (understanding instanceof Understood understood) {
            Question question = understood.reading().question();
            List<Fault> besides = faults(layout(question.layout()), faults);
            return new Asked(
                    answer(Supposing.also(question, besides)),
                    understood.others().stream().map(Reading::says).toList());
        }
        if (understanding instanceof Ambiguous ambiguous) {
            throw new BadInputException(
                    NOT_UNDERSTOOD,
                    ambiguous.says(),
                    ambiguous.readings().stream().map(Reading::says).toList());
        }
        if (understanding instanceof Declined declined) {
            throw new BadInputException(NOT_UNDERSTOOD, declined.says(), declined.nearest());
        }
        NotUnderstood not = (NotUnderstood) understanding;
        throw new BadInputException(NOT_UNDERSTOOD, not.says(), not.nearest());
    }

    public Answer answer(Question question) {
        try {
            return asking.answer(question);
        } catch (UnanswerableException e) {
            throw new BadInputException(UNFIT, e.getMessage());
        }
    }

    private static void requireShort(String what, String words) {
        if (words.length() > LONGEST_QUESTION) {
            throw new BadInputException(
                    MALFORMED,
                    "The %s is %d characters long. Put it in at most %d."
                            .formatted(what, words.length(), LONGEST_QUESTION));
        }
    }
}
