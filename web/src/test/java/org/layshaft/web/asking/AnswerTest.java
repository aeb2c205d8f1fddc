package org.layshaft.web.asking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.layshaft.engine.api.UnanswerableException;
import org.layshaft.kb.failure.Fault;

/** Answers in words, one or more of each kind of question. */
class AnswerTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "curlew | which gears still work if the 3-4 fork is bent | 1st, 2nd, 5th and reverse still work. 3rd and 4th are in doubt: it depends on which way and how far the 3-4 fork is bent.",
                "curlew | does 3rd work with third gear stripped | 3rd is lost. Third gear and the cluster third gear no longer turn each other: third gear is stripped.",
                "curlew | ratio of third | 3rd is 799/444 (1.800) to 1.",
                "curlew | ratio of fifth | 5th is 1 to 1.",
                "curlew | ratio of reverse | Reverse is 517/102 (5.069) to 1, backward.",
                "curlew | which way does the countershaft turn in third | In 3rd the countershaft turns the opposite way to the engine, 24/47 (0.511) of a turn for each turn of the engine.",
                "curlew | does the output shaft turn in neutral | In neutral, the vehicle standing, the output shaft stands still.",
                "curlew | which way does the 3-4 fork turn in third | The 3-4 fork does not turn at all.",
                "curlew | can first and second be engaged at once | 1st and 2nd cannot be engaged at once: the 1-2 rail moves to one side or the other, never both.",
                "avocet | 4th gear ratio | 4th is 1 to 1.",
                "curlew | 30 teeth at 1800 rpm, mesh frequency | Its teeth meet 900 times a second: 900 Hz, 30 teeth times 1800 turns a minute over 60, and so do those of the gear in mesh with it. Its shaft turns 30 times a second, 30 Hz: what comes once a turn, and sidebands of the mesh, are that far apart. A bearing on that shaft repeats a few times a turn, far below the mesh; how often follows from its balls or rollers, their size and its pitch circle, which are missing here.",
                "curlew | which gear is it with the 3-4 sleeve to the rear | With the 3-4 sleeve to the rear it is 3rd. The front is the end of the engine and the clutch.",
                "curlew | how many teeth has third gear | Third gear has 34 teeth.",
                "plover | rpm at 100 km/h in fifth | The speed of Plover cannot be told, the tyre or its rolling circumference is missing. Say in the question what is missing: \"… with an axle of 4.1 on 195/65 R15\".",
            })
    void isThis(String layout, String words, String says) {
        assertEquals(says, Saltmarsh.answered(layout, words));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "curlew | trace power in fifth | In 5th the power goes: input shaft → input gear → 5-R sleeve → output shaft.",
                "plover | power path in reverse | differential → left half-shaft and right half-shaft",
                "curlew | power path in third with third gear stripped | When all is sound the power in 3rd goes: input shaft",
                "curlew | what turns in neutral | The output shaft stands still. Relative to what they sit on, in turns for each turn of the engine: reverse gear on the output shaft, 102/517 (0.197)",
                "curlew | what turns in third | fourth gear on the output shaft, 4260/23171 (0.184)",
                "curlew | interlock pin missing | Two gears can be engaged at once and lock the box: 1st and 5th; 1st and reverse; 2nd and 5th; 2nd and reverse.",
                "curlew | can two gears be engaged at once | No two gears can be engaged at once.",
                "curlew | can two gears be engaged at once with the interlock pin missing | Can be engaged at once, and they lock the box: 1st and 5th; 1st and reverse; 2nd and 5th; 2nd and reverse.",
                "curlew | can first and third be engaged at once | prevented by the interlock plunger between the 1-2 and 3-4 rails",
                "curlew | second gear seized | In neutral it drives all the same.",
                "curlew | second gear seized | 1st, 3rd, 4th, 5th and reverse lock the box.",
                "curlew | why does third not work with the 3-4 fork bent | If the 3-4 fork is bent badly toward the front (4th), it is lost. The 3-4 sleeve does not reach far enough",
                "plover | left half-shaft broken, which gears work | The differential turns, but its side gear at the left half-shaft spins without load",
                "plover | left half-shaft broken, which gears work | No gear drives.",
                "curlew | clutch dragging | Shifting into 1st, 2nd, 3rd, 4th, 5th and reverse: it is hard to select.",
            })
    void holds(String layout, String words, String says) {
        String answered = Saltmarsh.answered(layout, words);
        assertTrue(answered.contains(says), answered);
    }

    @Test
    void carriesWhatItIsAbout() {
        Answer answer =
                Saltmarsh.ASKING.answer(new Question.PowerPath("curlew", List.of(Fault.of("3-4-fork", "bent")), "2"));
        assertEquals(List.of("2"), answer.gearsMeant());
        assertEquals(answer.whatIf().gear("2").orElseThrow().stance(), answer.stance());
        assertTrue(answer.motion().isPresent());
    }

    @Test
    void gearThatIsNotThereCannotBeAnswered() {
        UnanswerableException thrown = assertThrows(
                UnanswerableException.class,
                () -> Saltmarsh.ASKING.answer(new Question.WhyNot("curlew", List.of(), "6")));
        assertTrue(thrown.getMessage().contains("1st, 2nd, 3rd, 4th, 5th and reverse"), thrown.getMessage());
        assertThrows(
                UnanswerableException.class,
                () -> Saltmarsh.ASKING.answer(
                        new Question.WhatTurns("dunlin", List.of(), Optional.empty(), List.of())));
    }
}
