package org.layshaft.web.http;

import static org.layshaft.web.desk.BadInputException.Kind.UNKNOWN;

import org.layshaft.web.desk.BadInputException;
import org.layshaft.web.json.SchemaFiles;

/** What is said of the API itself: all of it in OpenAPI, and the schema of each answer. */
final class Descriptions {
    Reply api(Call call) {
        return Reply.of(200, Reply.JSON, SchemaFiles.openApi());
    }

    Reply schema(Call call) {
        return SchemaFiles.of(call.rest())
                .map(schema -> Reply.of(200, Reply.SCHEMA, schema))
                .orElseThrow(() -> new BadInputException(
                        UNKNOWN,
                        "There is no schema \"%s\". Those that there are stand in /api/openapi.json."
                                .formatted(call.rest())));
    }
}
