package org.benchleaf.render;

import freemarker.core.TemplateClassResolver;
import freemarker.core.XHTMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.DefaultObjectWrapperBuilder;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.concurrent.ConcurrentHashMap;
import org.benchleaf.content.ContentPack;

/// Fills the templates of the content pack. Everything put in is escaped; a template cannot make
/// objects, reach Java or include a file; numbers are written for machines.
final class SheetTemplates {
    private static final String MACROS = "\n";

    private final ContentPack content;
    private final Configuration configuration;
    private final Map<String, Template> parsed = new ConcurrentHashMap<>();

    SheetTemplates(ContentPack content) {
        this.content = content;
        this.configuration = new Configuration(Configuration.VERSION_2_3_34);
        configuration.setObjectWrapper(new DefaultObjectWrapperBuilder(Configuration.VERSION_2_3_34).build());
        configuration.setOutputFormat(XHTMLOutputFormat.INSTANCE);
        configuration.setAutoEscapingPolicy(Configuration.ENABLE_IF_SUPPORTED_AUTO_ESCAPING_POLICY);
        configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        configuration.setAPIBuiltinEnabled(false);
        configuration.setNumberFormat("computer");
        configuration.setBooleanFormat("c");
        configuration.setLocale(Locale.ROOT);
        configuration.setTimeZone(TimeZone.getTimeZone("UTC"));
        configuration.setDefaultEncoding("UTF-8");
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
    }

    /// @param name of the template, such as `plant-sheet`
    /// @throws org.benchleaf.content.MissingContent when the pack lacks it
    String fill(String name, Map<String, ?> model) {
        StringWriter out = new StringWriter(8192);
        try {
            template(name).process(model, out);
        } catch (TemplateException wrong) {
            throw new IllegalStateException(
                    "template " + name + " cannot be filled: " + wrong.getMessageWithoutStackTop(), wrong);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toString();
    }

    /// The same with the macros of another template before it, for a template cannot include one.
    String fill(String macros, String name, Map<String, ?> model) {
        return fill(macros + MACROS + name, model);
    }

    private Template template(String name) {
        return parsed.computeIfAbsent(name, key -> {
            String file = "templates/" + key + ".ftlh";
            StringBuilder text = new StringBuilder();
            for (String part : key.split(MACROS)) {
                text.append(content.text("templates/" + part + ".ftlh"));
            }
            try {
                return new Template(file, new StringReader(text.toString()), configuration);
            } catch (IOException wrong) {
                throw new UncheckedIOException("template " + file + " cannot be read: " + wrong.getMessage(), wrong);
            }
        });
    }
}
