package org.layshaft.web.page;

import static org.layshaft.web.desk.BadInputException.Kind.UNKNOWN;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.layshaft.engine.fit.FitCheck;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.desk.PartsDesk;

/** The pages that explain what each fit check looks at. Thread-safe. */
public final class CheckPages {
    private final PartsDesk parts;
    private final Templates templates;

    CheckPages(PartsDesk parts, Templates templates) {
        this.parts = parts;
        this.templates = templates;
    }

    /** @param body as HTML, made of what is escaped */
    private record CheckView(String title, String body) {}

    /** Throws {@link BadInputException} where there is no such check. */
    public String page(String id) {
        FitCheck check = parts.counter().checks().all().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new BadInputException(
                        UNKNOWN,
                        "There is no fit check \"%s\".".formatted(id),
                        parts.counter().checks().all().stream()
                                .map(FitCheck::id)
                                .toList()));
        return templates.fill("check", new CheckView(check.title(), Explanation.html(text(check))));
    }

    private static String text(FitCheck check) {
        String name = check.id() + ".md";
        try (InputStream in = check.getClass().getResourceAsStream(name)) {
            return in == null
                    ? "Nothing is written of this check."
                    : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("The explanation " + name + " cannot be read.", e);
        }
    }
}
