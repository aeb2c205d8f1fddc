package org.layshaft.web.page;

import com.github.mustachejava.DefaultMustacheFactory;
import com.github.mustachejava.MustacheFactory;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import org.layshaft.web.desk.Units;

/** Fills templates; whatever they show is escaped, but for drawings. Thread-safe. */
final class Templates {
    private final MustacheFactory factory = new DefaultMustacheFactory("org/layshaft/web/pages") {
        @Override
        public void encode(String value, Writer writer) {
            try {
                writer.write(escaped(value));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    };

    String fill(String template, Object view) {
        StringWriter html = new StringWriter();
        factory.compile(template + ".mustache").execute(html, view);
        return html.toString();
    }

    /** The same with its figures in these units. */
    String fill(String template, Object view, Units units, String link) {
        StringWriter html = new StringWriter();
        factory.compile(template + ".mustache").execute(html, new Object[] {UnitsView.of(units, link), view});
        return units.words(html.toString());
    }

    /** As text or as the value of an attribute in quotation marks. */
    static String escaped(String value) {
        return value.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
