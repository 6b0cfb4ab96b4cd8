package heapwright.advice.fact;

import heapwright.knowledge.Remedy;
import heapwright.knowledge.RemedyInfo;

/** A proposed remedy with what doing it means, as the table of remedies has it; the guard rules read it. */
public record Planned(Remedy remedy, RemedyInfo.Does does, boolean heavy) {

    public boolean opens() {
        return does.opens();
    }

    public boolean digsIn() {
        return does.digsIn();
    }

    public boolean wets() {
        return does.wets();
    }

    public boolean feeds() {
        return does.feeds();
    }

    public boolean addsNitrogen() {
        return does.addsNitrogen();
    }

    public boolean addsAlkali() {
        return does.addsAlkali();
    }

    public boolean addsDryStuff() {
        return does.addsDryStuff();
    }

    /** Whether it opens, turns, wets or feeds the pile. */
    public boolean disturbs() {
        return does.disturbs();
    }
}
