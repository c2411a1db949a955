package org.benchleaf.app.service;

import java.nio.file.Path;
import java.util.function.Consumer;
import org.benchleaf.app.Refusal;
import org.benchleaf.content.Wording;
import org.benchleaf.render.PrintRefused;
import org.benchleaf.render.PrintWatch;
import org.benchleaf.shared.Problem;

/// One run of the contact sheet: keeps going when a page or a whole file is refused, and tells which.
final class ContactRun implements PrintWatch {
    private final Path folder;
    private final Wording words;
    private final Consumer<String> told;
    private Path file;
    private int refused;

    /// @param words in which refusals are told
    /// @param told gets each file with its pages, and what could not be printed
    ContactRun(Path folder, Wording words, Consumer<String> told) {
        this.folder = folder;
        this.file = folder;
        this.words = words;
        this.told = told;
    }

    /// Prints to the file that it is given.
    interface Job {
        /// @return pages written
        int print(Path file);
    }

    /// @param name of the file, without its ending
    void file(String name, Job job) {
        file = folder.resolve(name + ".pdf");
        int before = refused;
        try {
            told.accept(file + ": " + job.print(file));
        } catch (PrintRefused refusal) {
            // when every page of it was refused, each was told already
            if (refused == before) {
                tell(refusal.problem());
            }
        } catch (Refusal refusal) {
            tell(refusal.problem());
        }
    }

    @Override
    public void refused(PrintRefused refusal) {
        tell(refusal.problem());
    }

    private void tell(Problem problem) {
        refused++;
        told.accept(file + ": " + words.problem(problem));
    }

    /// How many pages and files could not be printed.
    int refused() {
        return refused;
    }
}
