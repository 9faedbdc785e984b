package org.comparanda.bone;

/** What a person says of a bone before measuring it, on a tray or of a skeleton on the shelf. */
public record HeldBone(ElementKey element, Side side, Portion portion, BoneState state) {}
