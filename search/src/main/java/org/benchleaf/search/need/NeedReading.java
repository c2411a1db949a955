package org.benchleaf.search.need;

import java.util.List;
import org.benchleaf.shared.need.Need;

/// What was made of a sentence; every word in it stands in one of the lists, stop words aside.
///
/// @param need the wishes, each once, in the order said
/// @param understood which words were read as which wish
/// @param notUnderstood the words that were not, in their order; names of plants may be among them
/// @param notes how doubtful words were taken
/// @param others what doubtful words may mean as well
public record NeedReading(
        Need need,
        List<Understood> understood,
        List<String> notUnderstood,
        List<Note> notes,
        List<OtherReading> others) {
    public NeedReading {
        understood = List.copyOf(understood);
        notUnderstood = List.copyOf(notUnderstood);
        notes = List.copyOf(notes);
        others = List.copyOf(others);
    }
}
