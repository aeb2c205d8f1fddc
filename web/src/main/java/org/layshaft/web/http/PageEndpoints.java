package org.layshaft.web.http;

import org.layshaft.web.page.Address;
import org.layshaft.web.page.Pages;

/** The page and the drawing by itself. */
final class PageEndpoints {
    private final Pages pages;

    PageEndpoints(Pages pages) {
        this.pages = pages;
    }

    Reply page(Call call) {
        return Reply.of(200, Reply.HTML, pages.page(address(call)));
    }

    Reply drawing(Call call) {
        return Reply.of(200, Reply.SVG, pages.drawing(address(call).inLayout(call.rest())));
    }

    Reply sound(Call call) {
        return Reply.of(200, Reply.HTML, pages.sound(SoundCalls.request(call)));
    }

    private static Address address(Call call) {
        return new Address(
                call.first("layout"), call.first("q"), call.first("gear"), call.all("fault"), call.first("part"));
    }
}
