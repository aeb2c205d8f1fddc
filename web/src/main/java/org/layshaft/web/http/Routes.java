package org.layshaft.web.http;

import java.util.List;
import org.layshaft.kb.json.DocumentReader;
import org.layshaft.web.board.Library;
import org.layshaft.web.desk.Desk;
import org.layshaft.web.page.Pages;

/** Every address that is answered. */
final class Routes {
    private Routes() {}

    static List<Route> over(Library library) {
        Desk desk = library.desk();
        Pages pages = new Pages(desk);
        BoardEndpoints board = new BoardEndpoints(library, pages.board(library));
        SavingEndpoint saving = new SavingEndpoint(library);
        Api api = new Api(desk);
        Assets assets = Assets.load();
        Descriptions described = new Descriptions();
        PageEndpoints page = new PageEndpoints(pages);
        PartsEndpoints parts = new PartsEndpoints(desk, pages);
        SwapEndpoints swaps = new SwapEndpoints(desk, pages);
        WishEndpoints wishes = new WishEndpoints(desk, pages);
        ViewEndpoints views = new ViewEndpoints(desk, pages);
        return List.of(
                new Route("/", page::page),
                new Route("/drawing/*.svg", page::drawing),
                new Route("/sound", page::sound),
                new Route("/layouts", views::gallery),
                new Route("/api/gallery", views::galleryJson),
                new Route("/box", views::glance),
                new Route("/compare", views::compare),
                new Route("/api/compare", views::compareJson),
                new Route("/road", views::road),
                new Route("/api/road", views::roadJson),
                new Route("/assets/*", assets::answer),
                new Route("/api/openapi.json", described::api),
                new Route("/api/*.schema.json", described::schema),
                new Route("/api/layouts", api::layouts),
                new Route("/api/layouts/*", api::layout)
                        .and("PUT", Reply.JSON, DocumentReader.LARGEST_BYTES, saving::save),
                new Route("/api/layouts/*/text", board::text),
                new Route("/board", board::page).and("POST", Route.FORM, BoardEndpoints.MOST_FORM_BYTES, board::sent),
                Route.taking("POST", "/api/board/look", Reply.JSON, BoardEndpoints.MOST_JSON_BYTES, board::look),
                new Route("/suspects", page::suspects),
                new Route("/suspects/diagnosis.json", api::savedDiagnosis),
                new Route("/api/gears", api::gears),
                new Route("/api/faults", api::faults),
                new Route("/api/suspects", api::suspects),
                new Route("/api/ask", api::ask),
                new Route("/api/complete", api::complete),
                new Route("/api/words", api::words),
                new Route("/api/sound", api::sound),
                new Route("/fit", parts::page),
                new Route("/fit/check/*", parts::check),
                new Route("/api/fit", parts::fit),
                new Route("/cross", parts::cross),
                new Route("/cross.csv", parts::crossCsv),
                new Route("/api/cross", parts::crossJson),
                new Route("/swap", swaps::page),
                new Route("/api/swap", swaps::swap),
                new Route("/wish", wishes::page),
                new Route("/api/wish", wishes::wish),
                new Route("/identify", swaps::bench),
                new Route("/api/identify", swaps::identify),
                new Route("/api/parts", parts::parts),
                new Route("/problems/*", page::problem));
    }
}
