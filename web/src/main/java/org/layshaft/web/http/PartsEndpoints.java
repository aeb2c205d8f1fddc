package org.layshaft.web.http;

import org.layshaft.engine.fit.CrossTable;
import org.layshaft.web.desk.CrossChoice;
import org.layshaft.web.desk.CrossCsv;
import org.layshaft.web.desk.CrossDesk;
import org.layshaft.web.desk.CrossRequest;
import org.layshaft.web.desk.Desk;
import org.layshaft.web.desk.FitDesk;
import org.layshaft.web.desk.FitRequest;
import org.layshaft.web.desk.PartsDesk;
import org.layshaft.web.desk.Units;
import org.layshaft.web.json.CrossJson;
import org.layshaft.web.json.FitJson;
import org.layshaft.web.json.Json;
import org.layshaft.web.json.PartsJson;
import org.layshaft.web.page.Pages;

/** The parts counter: its page, and the same in JSON. */
final class PartsEndpoints {
    private final PartsDesk parts;
    private final FitDesk desk;
    private final Pages pages;

    PartsEndpoints(Desk desk, Pages pages) {
        this.parts = desk.parts();
        this.desk = new FitDesk(desk.parts());
        this.pages = pages;
    }

    Reply page(Call call) {
        return Reply.of(pages.fit().answer(request(call), Units.of(call.first("units"))));
    }

    Reply check(Call call) {
        return Reply.of(200, Reply.HTML, pages.checks().page(call.rest()));
    }

    Reply fit(Call call) {
        return Reply.of(200, Reply.JSON, Json.write(FitJson.of(desk.fit(request(call)), parts.catalogue())));
    }

    Reply parts(Call call) {
        return Reply.of(
                200,
                Reply.JSON,
                Json.write(PartsJson.of(parts, call.first("find").orElse(""))));
    }

    Reply cross(Call call) {
        return Reply.of(pages.cross().answer(crossing(call)));
    }

    Reply crossCsv(Call call) {
        return Reply.of(200, Reply.CSV, CrossCsv.of(crossed(crossing(call))))
                .with("Content-Disposition", "attachment; filename=\"cross.csv\"");
    }

    Reply crossJson(Call call) {
        CrossRequest request = crossing(call);
        return Reply.of(200, Reply.JSON, Json.write(CrossJson.of(crossed(request), request.companions())));
    }

    /** The table; with companions, once it is made. */
    private CrossTable crossed(CrossRequest request) {
        CrossDesk cross = parts.cross();
        CrossChoice choice = cross.choice(request);
        return choice.of(request.companions() ? cross.awaitWithCompanions() : cross.asTheyAre());
    }

    private static CrossRequest crossing(Call call) {
        return new CrossRequest(
                call.first("box"),
                call.first("shape"),
                call.first("verdict"),
                call.first("companions").filter("yes"::equals).isPresent());
    }

    private static FitRequest request(Call call) {
        return new FitRequest(call.first("set"), call.first("box"), call.first("serial"), call.first("place"));
    }
}
