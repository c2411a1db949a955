package org.benchleaf.search.need;

/// How a word with more than one meaning was taken; content puts it into words under `need.note.` + key.
///
/// @param key for example `zone-colder-half`
/// @param words the words it is about, as they stood
/// @param readAs what they were taken for, for example `6a`
public record Note(String key, String words, String readAs) {}
