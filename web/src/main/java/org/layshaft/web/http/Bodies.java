package org.layshaft.web.http;

import static org.layshaft.web.desk.BadInputException.Kind.MALFORMED;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.MimeTypes;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;
import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.http.Route.Answering;
import org.layshaft.web.json.ProblemKind;

/** Reads what is sent with a request: of the right type, and no more of it than is wanted. */
final class Bodies {
    /** What may come where nothing is read; it is thrown away. */
    private static final int MOST_UNREAD_BYTES = 8 * 1024;

    private Bodies() {}

    /** There is more than is read. */
    static final class TooLongException extends RuntimeException {
        private static final long serialVersionUID = 1;
        private final transient Refusal refusal;

        TooLongException(int mostBytes) {
            this.refusal = tooLong(mostBytes);
        }

        Refusal refusal() {
            return refusal;
        }
    }

    static boolean isReading(String method) {
        return method.equals("GET") || method.equals("HEAD");
    }

    static Optional<Refusal> refuseLength(Request request, Optional<Answering> answering) {
        int most =
                answering.map(Answering::mostBytes).filter(bytes -> bytes > 0).orElse(0);
        return request.getLength() > Math.max(most, MOST_UNREAD_BYTES) ? Optional.of(tooLong(most)) : Optional.empty();
    }

    static Optional<Refusal> refuseType(Request request, Answering answering) {
        String typed = request.getHeaders().get(HttpHeader.CONTENT_TYPE);
        String given = typed == null
                ? ""
                : MimeTypes.getContentTypeWithoutCharset(typed).strip();
        return answering
                .type()
                .filter(type -> !type.equalsIgnoreCase(given))
                .map(type -> Refusal.of(
                                ProblemKind.OTHER_TYPE,
                                "What was sent is of the type \"%s\". Send it as %s.".formatted(given, type))
                        .with("Accept", type));
    }

    /** Throws {@link TooLongException}, and {@link BadInputException} where it is no text. */
    static String read(Request request, Answering answering) {
        try (InputStream in = Content.Source.asInputStream(request)) {
            byte[] bytes = in.readNBytes(answering.mostBytes() + 1);
            if (bytes.length > answering.mostBytes()) {
                throw new TooLongException(answering.mostBytes());
            }
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new BadInputException(MALFORMED, "What was sent is not text in UTF-8. Send it as UTF-8.");
        } catch (IOException e) {
            throw new BadInputException(MALFORMED, "What was sent broke off. Send it again.");
        }
    }

    private static Refusal tooLong(int mostBytes) {
        return Refusal.of(
                ProblemKind.TOO_LARGE,
                mostBytes == 0
                        ? "The request carries more than is read here. Ask with GET, and without a body."
                        : "What was sent is longer than the %,d bytes that are read here.".formatted(mostBytes));
    }
}
