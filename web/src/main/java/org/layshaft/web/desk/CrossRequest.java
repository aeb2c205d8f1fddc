package org.layshaft.web.desk;

import java.util.Optional;

/**
 * Which sets against which boxes, as written.
 *
 * @param box id or name of a layout or a build; empty for all
 * @param shape what the sets are made of: {@code pair}; empty for all
 * @param verdict only sets that come out so in one of the boxes at least: {@code fits-with}
 * @param companions whether what does not fit as it is was tried with further parts
 */
public record CrossRequest(
        Optional<String> box, Optional<String> shape, Optional<String> verdict, boolean companions) {}
