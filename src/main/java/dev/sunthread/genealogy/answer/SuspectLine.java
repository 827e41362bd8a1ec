package dev.sunthread.genealogy.answer;

import dev.sunthread.genealogy.Certainty;

/** A thing that an answer was asked of, and how surely it is meant. */
record SuspectLine(Named named, Certainty certainty) {}
