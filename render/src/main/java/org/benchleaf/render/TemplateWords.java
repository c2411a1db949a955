package org.benchleaf.render;

import freemarker.template.SimpleScalar;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateModel;
import org.benchleaf.content.Wording;

/// The words of a language for templates: `words["sheet.facts"]`. A missing word stops the print.
record TemplateWords(Wording words) implements TemplateHashModel {
    @Override
    public TemplateModel get(String key) {
        return new SimpleScalar(words.text(key));
    }

    @Override
    public boolean isEmpty() {
        return false;
    }
}
