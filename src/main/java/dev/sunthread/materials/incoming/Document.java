package dev.sunthread.materials.incoming;

/** An attached document with its bytes. */
public record Document(String name, String mediaType, byte[] content) {}
