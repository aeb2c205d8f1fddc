package org.layshaft.web.http;

import org.layshaft.web.page.Address;
import org.layshaft.web.page.Pages;
import org.layshaft.web.page.Sight;
import org.layshaft.web.page.SuspectsPage;
import org.layshaft.web.page.SuspectsRequest;

/** The page and the drawing by itself. */
final class PageEndpoints {
    private final Pages pages;

    PageEndpoints(Pages pages) {
        this.pages = pages;
    }

    Reply page(Call call) {
        return Reply.of(200, Reply.HTML, pages.page(address(call), call.first("after")));
    }

    Reply suspects(Call call) {
        SuspectsPage.Answer answer = pages.suspects().answer(request(call));
        return answer.movedTo().map(Reply::movedTo).orElseGet(() -> Reply.of(200, Reply.HTML, answer.html()));
    }

    private static SuspectsRequest request(Call call) {
        return new SuspectsRequest(
                call.first("layout"),
                call.all("seen"),
                call.first("words"),
                call.first("notice"),
                call.first("noticed"),
                call.first("when"),
                call.all("gear"),
                call.first("heat"),
                call.first("work"),
                call.first("saved"));
    }

    Reply drawing(Call call) {
        return Reply.of(200, Reply.SVG, pages.drawing(address(call).inLayout(call.rest())));
    }

    Reply sound(Call call) {
        return Reply.of(200, Reply.HTML, pages.sound(SoundCalls.request(call)));
    }

    Reply problem(Call call) {
        return Reply.of(200, Reply.HTML, pages.problem(call.rest()));
    }

    private static Address address(Call call) {
        return new Address(
                call.first("layout"),
                call.first("q"),
                call.first("gear"),
                call.all("fault"),
                call.first("part"),
                call.all("seen"),
                new Sight(
                        call.all("sleeve"),
                        call.first("view"),
                        call.first("words"),
                        call.first("rpm"),
                        call.first("nm"),
                        call.first("ink")));
    }
}
