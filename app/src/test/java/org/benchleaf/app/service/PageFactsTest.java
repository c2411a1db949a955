package org.benchleaf.app.service;

import static org.assertj.core.api.Assertions.assertThat;

import org.benchleaf.catalog.model.Attributes;
import org.junit.jupiter.api.Test;

class PageFactsTest {
    @Test
    void givesEveryAttributeOfTheCatalogAPlaceOnThePage() {
        assertThat(PageFacts.placed()).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(Attributes.all());
    }
}
