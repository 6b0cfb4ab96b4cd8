package heapwright.web.view;

/**
 * Whoever looks after another pile of the folder, offered for a new one.
 *
 * @param id the id of that pile
 * @param text who, in words
 */
public record KeeperView(String id, String text) {}
