package org.layshaft.kb.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Reads a JSON file: UTF-8, comments and trailing commas allowed, within limits of size and depth. Thread-safe.
 *
 * <p>Whatever the bytes are, what comes of it is a document, or findings, or both.
 */
public final class DocumentReader {
    /** The largest file that is read, in bytes. */
    public static final int LARGEST_BYTES = 1_000_000;

    /** How deep objects and lists may lie in one another. */
    static final int DEEPEST = 50;

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(JsonReadFeature.ALLOW_JAVA_COMMENTS)
            .enable(JsonReadFeature.ALLOW_TRAILING_COMMA)
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST)
                    .maxNumberLength(TreeBuilder.LONGEST_NUMBER)
                    .maxStringLength(LARGEST_BYTES)
                    .build())
            .build();

    private DocumentReader() {}

    /** What an unreadable file holds is said in {@code findings}; so are duplicate keys, which spoil nothing else. */
    public record Read(Optional<Document> document, Report report) {}

    public static Read read(String file, byte[] bytes) {
        Report unread = Report.on(file);
        if (bytes.length > LARGEST_BYTES) {
            unread.broken(
                    "",
                    "The file is larger than %,d bytes.".formatted(LARGEST_BYTES),
                    "more than %,d bytes".formatted(LARGEST_BYTES),
                    "Split it into several files; a layout of a few hundred parts needs a few tens of kilobytes.");
            return new Read(Optional.empty(), unread);
        }
        Optional<String> text = decode(bytes, unread);
        if (text.isPresent() && text.get().isBlank()) {
            unread.broken("", "The file is empty.", "", "Give it its content, or delete it.");
            return new Read(Optional.empty(), unread);
        }
        return text.map(json -> parse(file, json, unread)).orElseGet(() -> new Read(Optional.empty(), unread));
    }

    /** Of a text, with what is allowed in our files. */
    static JsonParser parser(String text) throws IOException {
        return FACTORY.createParser(text);
    }

    private static Read parse(String file, String text, Report unread) {
        try (JsonParser parser = parser(text)) {
            TreeBuilder builder = new TreeBuilder(parser);
            Document document = builder.document(file);
            Report report = Report.on(document);
            builder.repeatedKeys().forEach(repeated -> repeated.tell(report));
            return new Read(Optional.of(document), report);
        } catch (TreeBuilder.BeyondLimitException limit) {
            unread.brokenAt("", limit.line(), limit.getMessage(), limit.value(), limit.advice());
        } catch (JsonEOFException end) {
            unread.brokenAt(
                    "",
                    end.getLocation().getLineNr(),
                    "The file ends in the middle of an object, a list or a text.",
                    spot(text, end.getLocation()),
                    "Close every { with }, every [ with ] and every quotation mark with another.");
        } catch (JsonProcessingException bad) {
            JsonLocation place = bad.getLocation();
            unread.brokenAt(
                    "",
                    place.getLineNr(),
                    "This cannot be read as JSON: line %d, column %d."
                            .formatted(place.getLineNr(), place.getColumnNr()),
                    spot(text, place),
                    "Look there and just before: most often a comma, a colon, a quotation mark or a bracket is missing.");
        } catch (IOException impossible) {
            throw new IllegalStateException("reading from memory failed", impossible);
        }
        return new Read(Optional.empty(), unread);
    }

    private static Optional<String> decode(byte[] bytes, Report unread) {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer from = ByteBuffer.wrap(bytes);
        CharBuffer into = CharBuffer.allocate(bytes.length + 1);
        if (decoder.decode(from, into, true).isError()) {
            String before = into.flip().toString();
            int line = 1 + (int) before.chars().filter(letter -> letter == '\n').count();
            unread.brokenAt(
                    "",
                    line,
                    "The file is not text in UTF-8: a byte of line %d stands for no letter.".formatted(line),
                    "byte 0x%02X".formatted(bytes[from.position()]),
                    "Save it as UTF-8 text.");
            return Optional.empty();
        }
        String text = into.flip().toString();
        return Optional.of(text.startsWith("\uFEFF") ? text.substring(1) : text);
    }

    private static String spot(String text, JsonLocation place) {
        int end = (int) Math.max(0, Math.min(text.length(), place.getCharOffset() + 1));
        int lineStart = text.lastIndexOf('\n', Math.max(0, end - 2)) + 1;
        return text.substring(Math.max(Math.min(lineStart, end), end - 40), end).strip();
    }
}
