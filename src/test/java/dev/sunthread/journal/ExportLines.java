package dev.sunthread.journal;

import java.util.ArrayList;
import java.util.List;

/** The lines of an export, which can be changed for a try. */
record ExportLines(List<String> lines) {

    int size() {
        return lines.size();
    }

    String get(int line) {
        return lines.get(line);
    }

    ExportLines without(int line) {
        List<String> fewer = new ArrayList<>(lines);
        fewer.remove(line);
        return new ExportLines(fewer);
    }

    ExportLines with(int line, String changed) {
        List<String> other = new ArrayList<>(lines);
        other.set(line, changed);
        return new ExportLines(other);
    }

    ExportLines withAnotherCharacter(int line, int at) {
        String before = get(line);
        char other = before.charAt(at) == '7' ? '8' : '7';
        return with(line, before.substring(0, at) + other + before.substring(at + 1));
    }

    String text() {
        return String.join("\n", lines);
    }
}
