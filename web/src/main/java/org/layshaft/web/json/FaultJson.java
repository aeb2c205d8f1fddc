package org.layshaft.web.json;

import java.util.List;
import java.util.Map;
import org.layshaft.kb.failure.Fault;
import org.layshaft.web.asking.FaultNaming;

/**
 * A fault that is supposed.
 *
 * @param told what is known of it, by name: {@code side} to {@code front}
 * @param written as it may be given again: {@code 3-4-fork bent side=front}
 * @param says it in words
 */
public record FaultJson(String part, String mode, Map<String, String> told, String written, String says) {

    static List<FaultJson> all(List<Fault> faults, FaultNaming words) {
        return faults.stream()
                .map(fault ->
                        new FaultJson(fault.part(), fault.mode(), fault.told(), fault.written(), words.said(fault)))
                .toList();
    }
}
