package org.layshaft.web.desk;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.layshaft.engine.fit.BuiltBox;
import org.layshaft.engine.fit.CrossTable;
import org.layshaft.engine.fit.FitVerdict;
import org.layshaft.kb.catalogue.SetShape;

/**
 * Which rows and columns of a table are wanted.
 *
 * @param shape what the sets are made of; empty for all
 * @param verdict only sets that come out so in one of the boxes at least
 */
public record CrossChoice(List<BuiltBox> boxes, Optional<SetShape> shape, Optional<FitVerdict> verdict) {

    static CrossChoice of(CrossRequest request, BuiltBoxes known) {
        WrittenNumbers written = new WrittenNumbers();
        Optional<FitVerdict> verdict = request.verdict()
                .flatMap(word ->
                        written.unlessRefused(() -> named("verdict", word, FitVerdict.values(), FitVerdict::word)));
        Optional<SetShape> shape = request.shape()
                .flatMap(word -> written.unlessRefused(() -> named("shape", word, SetShape.values(), SetShape::word)));
        Optional<List<BuiltBox>> boxes = written.unlessRefused(() ->
                request.box().map(name -> known.called(name, Optional.empty())).orElseGet(known::all));
        written.refuse();
        return new CrossChoice(boxes.orElseThrow(), shape, verdict);
    }

    private static <T> T named(String what, String word, T[] all, Function<T, String> spelt) {
        String wanted = word.strip().toLowerCase(Locale.ROOT);
        return Stream.of(all)
                .filter(each -> spelt.apply(each).equals(wanted))
                .findFirst()
                .orElseThrow(() -> {
                    List<String> known = Stream.of(all).map(spelt).toList();
                    return new BadInputException(
                            BadInputException.Kind.UNKNOWN,
                            "There is no %s \"%s\". There are: %s.".formatted(what, word, String.join(", ", known)),
                            Nearest.to(wanted, known));
                });
    }

    /** Those rows and columns. */
    public CrossTable of(CrossTable table) {
        return new CrossTable(
                table.sets().stream()
                        .filter(set -> shape.isEmpty() || set.shape() == shape.get())
                        .filter(set -> verdict.isEmpty()
                                || boxes.stream().anyMatch(box -> comesTo(table.at(set, box), verdict.get())))
                        .toList(),
                boxes,
                table.cells());
    }

    private static boolean comesTo(CrossTable.Cell cell, FitVerdict wanted) {
        return cell != null && cell.best() == wanted;
    }
}
