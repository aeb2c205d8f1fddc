package org.layshaft.web.http;

import org.layshaft.web.desk.BenchDesk;
import org.layshaft.web.desk.BenchRequest;
import org.layshaft.web.desk.Desk;
import org.layshaft.web.desk.SwapDesk;
import org.layshaft.web.desk.SwapRequest;
import org.layshaft.web.desk.Units;
import org.layshaft.web.json.IdentifyJson;
import org.layshaft.web.json.Json;
import org.layshaft.web.json.SwapJson;
import org.layshaft.web.page.Pages;

/** What a change does, and what something at the bench may be: the pages, and the same in JSON. */
final class SwapEndpoints {
    private final SwapDesk desk;
    private final Pages pages;

    SwapEndpoints(Desk desk, Pages pages) {
        this.desk = desk.swaps();
        this.pages = pages;
    }

    Reply page(Call call) {
        return Reply.of(pages.swap().answer(change(call), units(call)));
    }

    Reply swap(Call call) {
        return Reply.of(200, Reply.JSON, Json.write(SwapJson.of(desk.swap(change(call)))));
    }

    Reply bench(Call call) {
        return Reply.of(pages.identify().answer(measured(call), units(call)));
    }

    Reply identify(Call call) {
        return Reply.of(200, Reply.JSON, Json.write(IdentifyJson.of(BenchDesk.identify(measured(call)))));
    }

    private static Units units(Call call) {
        return Units.of(call.first("units"));
    }

    private static SwapRequest change(Call call) {
        return new SwapRequest(
                call.first("box"),
                call.first("serial"),
                call.first("set"),
                call.first("place"),
                call.first("tyre"),
                call.first("wasTyre"),
                call.first("axle"),
                call.first("drive"),
                call.first("cruise"),
                call.first("shift"),
                call.first("torque"));
    }

    private static BenchRequest measured(Call call) {
        return new BenchRequest(
                call.first("form"),
                call.first("teeth"),
                call.first("tip"),
                call.first("root"),
                call.all("span"),
                call.first("pins"),
                call.first("helix"),
                call.first("centre"),
                call.first("spline"),
                call.first("hub"));
    }
}
