package org.layshaft.web.http;

import org.layshaft.web.desk.Desk;
import org.layshaft.web.desk.Units;
import org.layshaft.web.desk.WishDesk;
import org.layshaft.web.desk.WishRequest;
import org.layshaft.web.json.Json;
import org.layshaft.web.json.WishJson;
import org.layshaft.web.page.Pages;

/** What meets a wish: the page, and the same in JSON. */
final class WishEndpoints {
    private final WishDesk desk;
    private final Pages pages;

    WishEndpoints(Desk desk, Pages pages) {
        this.desk = new WishDesk(desk.parts());
        this.pages = pages;
    }

    Reply page(Call call) {
        return Reply.of(pages.wish().answer(wished(call), Units.of(call.first("units"))));
    }

    Reply wish(Call call) {
        return Reply.of(200, Reply.JSON, Json.write(WishJson.of(desk.wish(wished(call)))));
    }

    private static WishRequest wished(Call call) {
        return new WishRequest(
                call.first("box"),
                call.first("serial"),
                call.first("wish"),
                call.first("gear"),
                call.first("value"),
                call.first("other"),
                call.first("at"),
                call.first("within"),
                call.first("centre"),
                call.first("axle"),
                call.first("tyre"),
                call.first("wasTyre"));
    }
}
