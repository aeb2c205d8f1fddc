package org.layshaft.web.asking;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.layshaft.web.Demo;

/** A failure that is denied is never taken for one that is there. */
class DenialTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "3-4 fork not bent, 1-2 fork bent",
                "the 3-4 fork is not bent",
                "the 3-4 fork isn't bent, which gears work",
                "1-2 fork bent and the 3-4 fork not badly bent",
                "if I don't break third gear does it still drive",
                "which gears work if the third gear didn't strip",
                "which gears work if the third gear was never stripped"
            })
    void a_denied_failure_is_refused_by_name(String words) {
        Understanding.NotUnderstood refused = assertInstanceOf(
                Understanding.NotUnderstood.class,
                Demo.desk().understand(Optional.of(Demo.desk().layout("curlew")), words));
        assertTrue(refused.says().contains(" is not "), refused.says());
        assertTrue(refused.says().contains("Leave out what is sound"), refused.says());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "why does 3rd not work if the 3-4 hub is stripped",
                "why is 3rd not working with the 3-4 fork bent"
            })
    void what_is_denied_of_a_gear_is_no_denial_of_a_failure(String words) {
        assertInstanceOf(
                Understanding.Understood.class,
                Demo.desk().understand(Optional.of(Demo.desk().layout("curlew")), words));
    }
}
