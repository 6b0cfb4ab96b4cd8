package heapwright.advice.engine;

import heapwright.knowledge.Known;
import heapwright.knowledge.Strength;

/**
 * What a rule or a row of evidence says of itself.
 *
 * @param id its id, {@code <PASS>-<number>}, never reused
 * @param name its name, "problem: answer"
 * @param pass the pass it runs in
 * @param strength how firmly it speaks
 * @param evidence what it rests on
 * @param source key of its source
 * @param rationale the mechanism in one sentence
 */
public record RuleInfo(
        String id, String name, Pass pass, Strength strength, Known evidence, String source, String rationale) {}
