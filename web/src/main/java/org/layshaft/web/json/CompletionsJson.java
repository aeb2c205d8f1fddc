package org.layshaft.web.json;

import java.util.List;

/**
 * Whole questions that begin as somebody types.
 *
 * @param begun as it was sent
 * @param completions the likeliest first
 */
public record CompletionsJson(String begun, List<String> completions) {}
