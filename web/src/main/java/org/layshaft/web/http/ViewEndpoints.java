package org.layshaft.web.http;

import org.layshaft.web.desk.Desk;
import org.layshaft.web.desk.RoadDesk;
import org.layshaft.web.desk.RoadRequest;
import org.layshaft.web.gallery.Gallery;
import org.layshaft.web.gallery.SideBySide;
import org.layshaft.web.json.CompareJson;
import org.layshaft.web.json.GalleryJson;
import org.layshaft.web.json.Json;
import org.layshaft.web.json.RoadJson;
import org.layshaft.web.page.GalleryRequest;
import org.layshaft.web.page.Pages;

/** Boxes to look at: among all, by themselves, two side by side, on the road; pages, and the same in JSON. */
final class ViewEndpoints {
    private final RoadDesk road;
    private final Desk desk;
    private final Gallery gallery;
    private final Pages pages;

    ViewEndpoints(Desk desk, Pages pages) {
        this.desk = desk;
        this.road = new RoadDesk(desk);
        this.gallery = new Gallery(desk.knowledge(), desk::box);
        this.pages = pages;
    }

    Reply road(Call call) {
        return Reply.of(pages.road().answer(driven(call)));
    }

    Reply roadJson(Call call) {
        call.required("layout", "/api/road?layout=curlew&at=90");
        return Reply.of(200, Reply.JSON, Json.write(RoadJson.of(road.drive(driven(call)))));
    }

    Reply gallery(Call call) {
        return Reply.of(pages.gallery()
                .answer(new GalleryRequest(
                        call.first("where"), call.all("has"), call.first("speeds"), call.first("layout"))));
    }

    Reply galleryJson(Call call) {
        return Reply.of(
                200,
                Reply.JSON,
                Json.write(GalleryJson.of(gallery.find(call.first("where"), call.all("has"), call.first("speeds")))));
    }

    Reply glance(Call call) {
        return Reply.of(200, Reply.HTML, pages.glance().page(call.first("layout")));
    }

    Reply compare(Call call) {
        return Reply.of(200, Reply.HTML, pages.compare().page(call.first("layout"), call.first("with")));
    }

    Reply compareJson(Call call) {
        String example = "/api/compare?layout=curlew&with=redshank";
        return Reply.of(
                200,
                Reply.JSON,
                Json.write(CompareJson.of(SideBySide.of(
                        gallery.likeness(desk.layout(call.required("layout", example))),
                        gallery.likeness(desk.layout(call.required("with", example))),
                        desk.knowledge().catalogue()))));
    }

    private static RoadRequest driven(Call call) {
        return new RoadRequest(
                call.first("layout"),
                call.first("tyre"),
                call.first("rolls"),
                call.first("axle"),
                call.first("mass"),
                call.first("efficiency"),
                call.first("rolling"),
                call.first("drag"),
                call.first("air"),
                call.first("engine"),
                call.first("revs"),
                call.first("at"),
                call.first("units"));
    }
}
