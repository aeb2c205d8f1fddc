package org.layshaft.web.asking.answering;

import org.layshaft.engine.api.Box;
import org.layshaft.engine.api.Diagnostician;
import org.layshaft.engine.api.Reasoner;
import org.layshaft.engine.api.UnanswerableException;
import org.layshaft.engine.words.Names;
import org.layshaft.kb.layout.Layout;
import org.layshaft.kb.pack.KnowledgeBase;
import org.layshaft.web.asking.Answer;
import org.layshaft.web.asking.FaultNaming;
import org.layshaft.web.asking.PartsAnswers;
import org.layshaft.web.asking.Question;
import org.layshaft.web.asking.Restating;

/** Answers questions: asks the engine what follows, and has it said in words. Thread-safe. */
public final class Answering {
    private final KnowledgeBase knowledge;
    private final Reasoner reasoner;
    private final Diagnostician diagnostician;
    private final PartsAnswers parts;

    public Answering(KnowledgeBase knowledge, Reasoner reasoner, Diagnostician diagnostician, PartsAnswers parts) {
        this.knowledge = knowledge;
        this.reasoner = reasoner;
        this.diagnostician = diagnostician;
        this.parts = parts;
    }

    /** Throws {@link UnanswerableException} where the question cannot stand. */
    public Answer answer(Question question) {
        Layout layout = knowledge
                .layout(question.layout())
                .orElseThrow(() ->
                        new UnanswerableException("There is no layout '%s'; see the list of layouts for what there is."
                                .formatted(question.layout())));
        Box box = reasoner.box(layout);
        Facts facts = new Facts(
                reasoner,
                box,
                reasoner.whatIf(layout, question.faults()),
                new Names(layout, knowledge.words()),
                new FaultNaming(knowledge, box));
        Composed composed = composed(question, layout, facts);
        return new Answer(
                question,
                new Restating(knowledge, box).said(question),
                composed.says(),
                facts.whatIf(),
                composed.gears(),
                composed.stance(),
                composed.motion(),
                composed.parts(),
                composed.conflicts());
    }

    private Composed composed(Question question, Layout layout, Facts facts) {
        if (question instanceof Question.Suspects asked) {
            return SuspectsComposer.compose(diagnostician.suspects(layout, asked.evidence()));
        }
        if (question instanceof Question.AtLarge asked) {
            return atLarge(asked, facts);
        }
        return question instanceof Question.OfParts asked ? Composed.of(parts.says(asked)) : compose(question, facts);
    }

    private Composed atLarge(Question.AtLarge question, Facts facts) {
        if (question instanceof Question.OnTheRoad road) {
            return new RoadComposer(facts, road).compose();
        } else if (question instanceof Question.TorqueAt torque) {
            return new TorqueComposer(facts, torque).compose(torque);
        } else if (question instanceof Question.Compared compared) {
            Layout other = knowledge
                    .layout(compared.other())
                    .orElseThrow(
                            () -> new UnanswerableException("There is no layout '%s'.".formatted(compared.other())));
            return new ComparedComposer(facts.box(), reasoner.box(other)).compose(compared);
        } else if (question instanceof Question.Sounding sounding) {
            return new SoundingComposer(facts).compose(sounding);
        } else if (question instanceof Question.MeshFrequency mesh) {
            return SoundingComposer.mesh(mesh);
        } else if (question instanceof Question.WheelsDo wheels) {
            return new WheelsComposer(facts).compose(wheels);
        } else if (question instanceof Question.Towed) {
            return new WheelsComposer(facts).towed();
        }
        return ofWords(question, new WordsComposer(facts, knowledge.words()), facts);
    }

    private Composed ofWords(Question.AtLarge question, WordsComposer words, Facts facts) {
        if (question instanceof Question.Meaning meaning) {
            return words.meaning(meaning);
        } else if (question instanceof Question.WhichGear which) {
            return words.whichGear(which);
        } else if (question instanceof Question.WhatFor part) {
            return words.whatFor(part);
        } else if (question instanceof Question.TeethOf teeth) {
            return words.teeth(teeth);
        }
        return new ExplainedComposer(facts, knowledge.words()).compose((Question.Explained) question);
    }

    private static Composed compose(Question question, Facts facts) {
        if (question instanceof Question.GearsLeft left) {
            return new GearsLeftComposer(facts).compose(left);
        } else if (question instanceof Question.WhatHappens) {
            return new WhatHappensComposer(facts).compose();
        } else if (question instanceof Question.RatioOf ratio) {
            return new RatioComposer(facts).compose(ratio);
        } else if (question instanceof Question.PowerPath path) {
            return new PowerPathComposer(facts).compose(path);
        } else if (question instanceof Question.WhatTurns turns) {
            return new WhatTurnsComposer(facts).compose(turns);
        } else if (question instanceof Question.WhichWay way) {
            return new WhichWayComposer(facts).compose(way);
        } else if (question instanceof Question.WhyNone) {
            return new WhyNoneComposer(facts).compose();
        } else if (question instanceof Question.TwoAtOnce two) {
            return new TwoAtOnceComposer(facts).compose(two);
        }
        return new WhyNotComposer(facts).compose((Question.WhyNot) question);
    }
}
