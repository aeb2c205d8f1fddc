package org.layshaft.web.asking;

import java.util.List;

/** What was made of somebody's words. */
public sealed interface Understanding {

    /** The same, with one more thing to say about how the words were read. */
    Understanding adding(String remark);

    /**
     * One reading is clearly the best.
     *
     * @param reading it
     * @param others other readings worth offering, likeliest first
     */
    record Understood(Reading reading, List<Reading> others) implements Understanding {
        @Override
        public Understanding adding(String remark) {
            return new Understood(new Reading(reading.question(), reading.says() + ". " + remark), others);
        }
    }

    /**
     * Several readings are as good as each other.
     *
     * @param says what is in doubt, in a sentence
     */
    record Ambiguous(String says, List<Reading> readings) implements Understanding {
        @Override
        public Understanding adding(String remark) {
            return new Ambiguous(says + " " + remark, readings);
        }
    }

    /**
     * No reading.
     *
     * @param says what was not understood and what would help, in one or two sentences
     * @param nearest questions that can be answered, nearest first, in words that will be understood
     */
    record NotUnderstood(String says, List<String> nearest) implements Understanding {
        @Override
        public Understanding adding(String remark) {
            return new NotUnderstood(says + " " + remark, nearest);
        }
    }

    /**
     * Understood, and beyond what can be answered here.
     *
     * @param reason its name in the packs: {@code price}
     * @param says why, and where there is an answer
     * @param nearest questions that can be answered
     */
    record Declined(String reason, String says, List<String> nearest) implements Understanding {
        @Override
        public Understanding adding(String remark) {
            return new Declined(reason, says + " " + remark, nearest);
        }
    }

    /**
     * One reading.
     *
     * @param says the question in our words: {@code which gears still drive in Curlew with the 3-4 fork bent}
     */
    record Reading(Question question, String says) {}
}
