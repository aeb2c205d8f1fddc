package org.layshaft.web.page;

import java.util.List;
import org.layshaft.web.asking.Understanding;
import org.layshaft.web.asking.Understanding.Ambiguous;
import org.layshaft.web.asking.Understanding.Declined;
import org.layshaft.web.asking.Understanding.NotUnderstood;
import org.layshaft.web.asking.Understanding.Reading;
import org.layshaft.web.asking.Understanding.Understood;

/**
 * What was made of a question.
 *
 * @param understood the question in our words; null where it was not
 * @param trouble what was not clear; null where all was
 * @param offer what the choices are: other readings, or other questions
 */
record ReadingView(String understood, String trouble, String offer, List<LinkView> choices) {

    static ReadingView of(Understanding understanding, Scene scene) {
        Address address = scene.address();
        if (understanding instanceof Understood understood) {
            return new ReadingView(
                    scene.answer().understood(), null, "It could also mean", links(address, says(understood.others())));
        } else if (understanding instanceof Ambiguous ambiguous) {
            return new ReadingView(
                    null, ambiguous.says(), "Which is meant", links(address, says(ambiguous.readings())));
        }
        if (understanding instanceof Declined declined) {
            return new ReadingView(null, declined.says(), "What can be answered", links(address, declined.nearest()));
        }
        NotUnderstood not = (NotUnderstood) understanding;
        return new ReadingView(null, not.says(), "What can be answered", links(address, not.nearest()));
    }

    private static List<String> says(List<Reading> readings) {
        return readings.stream().map(Reading::says).toList();
    }

    private static List<LinkView> links(Address address, List<String> questions) {
        return questions.stream()
                .map(question -> LinkView.to(question, address.asking(question)))
                .toList();
    }

    public boolean hasChoices() {
        return !choices.isEmpty();
    }
}
