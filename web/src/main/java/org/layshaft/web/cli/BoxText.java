package org.layshaft.web.cli;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.layshaft.engine.api.Box;
import org.layshaft.engine.words.Names;

/** What a layout comes to, in a line, with a line for each printed ratio that is not what is derived. */
final class BoxText {
    private BoxText() {}

    static String of(Box box) {
        String name = box.layout().name();
        String gears = box.gears().isEmpty()
                ? "%s comes to nothing: whatever is selected, the output does not follow the input.".formatted(name)
                : "%s comes to: %s.".formatted(name, ratios(box.gears()));
        Stream<String> differences =
                box.differences().stream().map(difference -> "  But %s.".formatted(difference.says()));
        return Stream.concat(Stream.of(gears), differences).collect(Collectors.joining("\n"));
    }

    private static String ratios(List<Box.DerivedGear> gears) {
        return gears.stream()
                .map(gear -> String.format(
                        Locale.ROOT,
                        "%s %.3f",
                        Names.gearName(gear.name()),
                        gear.ratio().toDouble()))
                .collect(Collectors.joining(", "));
    }
}
