package org.layshaft.web.json;

import java.util.List;
import org.layshaft.engine.api.Notice;
import org.layshaft.kb.failure.Heat;

/**
 * What a person notices.
 *
 * @param notice id among the notices of {@code words}
 * @param condition id among the conditions of {@code words}
 * @param heat {@code cold} or {@code hot} where it is noticed only then; null for either
 * @param certain whether it is noticed for certain; otherwise it may be
 */
public record NoticeJson(
        String notice, String condition, String heat, boolean certain, String says, ReasonJson because) {

    static List<NoticeJson> all(List<Notice> notices) {
        return notices.stream()
                .map(notice -> new NoticeJson(
                        notice.notice(),
                        notice.condition(),
                        notice.heat().map(Heat::word).orElse(null),
                        notice.certain(),
                        notice.says(),
                        ReasonJson.of(notice.because())))
                .toList();
    }
}
