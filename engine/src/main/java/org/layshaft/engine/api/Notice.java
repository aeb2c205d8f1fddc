package org.layshaft.engine.api;

import java.util.Optional;
import org.layshaft.kb.failure.Heat;

/**
 * What a person notices.
 *
 * @param notice id among the words' notices: {@code jumps-out}
 * @param condition id among the words' conditions, the word of a {@link org.layshaft.kb.failure.Situation}: {@code
 *     pulling}
 * @param heat whether only with all cold, or only with all hot; empty for either
 * @param says it in words
 * @param certain whether it is noticed in every possibility; if not, it may be noticed: in some of them, or where that
 *     depends on how bad a fault is
 * @param because why
 */
public record Notice(
        String notice, String condition, Optional<Heat> heat, String says, boolean certain, Reason because) {}
