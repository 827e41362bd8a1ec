package dev.sunthread.web.search;

/**
 * Something that a searched text may mean.
 *
 * @param what the kind of thing, in words
 * @param name its name as recorded
 * @param address the page that shows it
 * @param why why it is offered
 */
public record Hit(String what, String name, String address, String why) {}
