package org.layshaft.web.http;

import java.util.List;
import java.util.Optional;
import org.layshaft.engine.api.WhatIf;
import org.layshaft.kb.failure.Fault;
import org.layshaft.kb.layout.Layout;
import org.layshaft.web.asking.Answer;
import org.layshaft.web.desk.Asked;
import org.layshaft.web.desk.CanFail;
import org.layshaft.web.desk.Desk;
import org.layshaft.web.desk.DiagnosisDesk;
import org.layshaft.web.desk.SoundDesk;
import org.layshaft.web.json.AnswerJson;
import org.layshaft.web.json.CompletionsJson;
import org.layshaft.web.json.FaultsJson;
import org.layshaft.web.json.Json;
import org.layshaft.web.json.LayoutJson;
import org.layshaft.web.json.LayoutsJson;
import org.layshaft.web.json.SavedDiagnosis;
import org.layshaft.web.json.SoundJson;
import org.layshaft.web.json.SuspectsJson;
import org.layshaft.web.json.WordsJson;

/** The answers in JSON, the same as on the command line. */
final class Api {

    private final Desk desk;

    Api(Desk desk) {
        this.desk = desk;
    }

    Reply layouts(Call call) {
        return json(LayoutsJson.of(desk.knowledge()));
    }

    Reply layout(Call call) {
        return json(LayoutJson.of(desk.box(desk.layout(call.rest())), desk.knowledge()));
    }

    Reply gears(Call call) {
        Layout layout = desk.layout(call.required("layout", "/api/gears?layout=curlew&fault=3-4-fork+bent"));
        return json(answer(new Asked(desk.gearsLeft(layout, desk.faults(layout, call.all("fault"))), List.of())));
    }

    Reply ask(Call call) {
        String question = call.required("q", "/api/ask?layout=curlew&q=what+turns+in+neutral");
        Optional<Layout> layout = call.first("layout").map(desk::layout);
        String whole = desk.standingAlone(layout, question, call.first("after"));
        return json(answer(desk.ask(layout, call.all("fault"), whole)));
    }

    Reply complete(Call call) {
        String begun = call.required("q", "/api/complete?layout=curlew&q=what+turns");
        Optional<Layout> layout = call.first("layout").map(desk::layout);
        return json(new CompletionsJson(begun, desk.completions(layout, begun)));
    }

    Reply faults(Call call) {
        Layout layout = desk.layout(call.required("layout", "/api/faults?layout=curlew&fault=3-4-fork+bent"));
        List<Fault> faults = desk.faults(layout, call.all("fault"));
        if (faults.isEmpty()) {
            return json(FaultsJson.ofWhatCanFail(layout, CanFail.all(desk.knowledge(), layout)));
        }
        WhatIf whatIf = desk.gearsLeft(layout, faults).whatIf();
        return json(FaultsJson.of(layout, whatIf, desk.names(layout), desk.faultWords(layout)));
    }

    Reply suspects(Call call) {
        Layout layout = desk.layout(call.required("layout", "/api/suspects?layout=curlew&seen=pulling+3:+growls"));
        DiagnosisDesk diagnosis = desk.diagnosis();
        return json(SuspectsJson.of(
                diagnosis.diagnose(layout, diagnosis.evidence(layout, call.all("seen"))), desk.faultWords(layout)));
    }

    /** The diagnosis as a file, to be put away and taken up again. */
    Reply savedDiagnosis(Call call) {
        Layout layout = desk.layout(call.required("layout", "/suspects/diagnosis.json?layout=curlew"));
        DiagnosisDesk diagnosis = desk.diagnosis();
        SavedDiagnosis saved =
                SavedDiagnosis.of(diagnosis.diagnose(layout, diagnosis.evidence(layout, call.all("seen"))));
        return json(saved)
                .with("Content-Disposition", "attachment; filename=\"diagnosis-%s.json\"".formatted(layout.id()));
    }

    Reply words(Call call) {
        return json(WordsJson.of(desk.knowledge()));
    }

    Reply sound(Call call) {
        return json(SoundJson.of(new SoundDesk(desk).listen(SoundCalls.request(call))));
    }

    private AnswerJson answer(Asked asked) {
        Answer answer = asked.answer();
        Layout layout = desk.layout(answer.question().layout());
        return AnswerJson.of(answer, asked.others(), layout, desk.names(layout), desk.faultWords(layout));
    }

    private static Reply json(Object record) {
        return Reply.of(200, Reply.JSON, Json.write(record));
    }
}
