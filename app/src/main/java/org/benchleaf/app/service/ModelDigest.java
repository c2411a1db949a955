package org.benchleaf.app.service;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/// A short text that is the same for two page models exactly when they say the same. Sets are sorted, for their order
/// is another in every run of the program.
final class ModelDigest {
    /// Of the digest's bytes; enough that no two pages of a shop ever share it by chance.
    private static final int BYTES = 12;

    private ModelDigest() {}

    static String of(Record model) {
        try {
            byte[] digest =
                    MessageDigest.getInstance("SHA-256").digest(text(model).getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest, 0, BYTES);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static String text(@Nullable Object value) {
        return switch (value) {
            case null -> "-";
            case Optional<?> optional -> optional.map(ModelDigest::text).orElse("-");
            case Set<?> set -> set.stream().map(ModelDigest::text).sorted().collect(Collectors.joining(",", "{", "}"));
            case Map<?, ?> map ->
                map.entrySet().stream()
                        .map(entry -> text(entry.getKey()) + ":" + text(entry.getValue()))
                        .sorted()
                        .collect(Collectors.joining(",", "{", "}"));
            case Collection<?> list -> list.stream().map(ModelDigest::text).collect(Collectors.joining(",", "[", "]"));
            case Record record -> record(record);
            case Enum<?> constant -> constant.name();
            default -> value.toString();
        };
    }

    private static String record(Record record) {
        StringBuilder text = new StringBuilder(record.getClass().getSimpleName()).append('(');
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            try {
                component.getAccessor().setAccessible(true);
                text.append(component.getName())
                        .append('=')
                        .append(text(component.getAccessor().invoke(record)))
                        .append(';');
            } catch (IllegalAccessException | InvocationTargetException impossible) {
                throw new IllegalStateException(impossible);
            }
        }
        return text.append(')').toString();
    }
}
