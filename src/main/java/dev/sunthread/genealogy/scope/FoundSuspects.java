package dev.sunthread.genealogy.scope;

import dev.sunthread.genealogy.walk.Suspect;
import java.util.List;

/** What a root stands for, and where joining the parts of its scope did nothing, each as a sentence. */
public record FoundSuspects(List<Suspect> suspects, List<String> notes) {}
