package asfound.report.since;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A value of a JSON file with the way to it, so that what is missing can be named. */
record Member(JsonNode node, String way) {

    /** A value is missing or is not what it should be. */
    static final class Missing extends RuntimeException {

        private static final long serialVersionUID = 1;

        Missing(String what) {
            super(what);
        }
    }

    private Member member(String name) {
        String there = way.isEmpty() ? name : way + "." + name;
        if (!node.has(name)) throw new Missing("it has no '" + there + "'.");
        return new Member(node.get(name), there);
    }

    boolean has(String name) {
        return node.hasNonNull(name);
    }

    Member object(String name) {
        Member member = member(name);
        if (!member.node.isObject()) throw new Missing("'" + member.way + "' is no object.");
        return member;
    }

    String text(String name) {
        Member member = member(name);
        if (!member.node.isTextual()) throw new Missing("'" + member.way + "' is no text.");
        return member.node.textValue();
    }

    /** A text or a number as text; empty for null. */
    Optional<String> optional(String name) {
        Member member = member(name);
        if (member.node.isNull()) return Optional.empty();
        if (!member.node.isValueNode()) throw new Missing("'" + member.way + "' is no text.");
        return Optional.of(member.node.asText());
    }

    List<Member> list(String name) {
        Member member = member(name);
        if (!member.node.isArray()) throw new Missing("'" + member.way + "' is no list.");
        List<Member> all = new ArrayList<>();
        for (int i = 0; i < member.node.size(); i++)
            all.add(new Member(member.node.get(i), member.way + "[" + i + "]"));
        return all;
    }

    /** There is a list; false for null. */
    boolean optionalList(String name) {
        return !member(name).node.isNull();
    }

    List<String> texts(String name) {
        return list(name).stream().map(Member::asText).toList();
    }

    private String asText() {
        if (!node.isTextual()) throw new Missing("'" + way + "' is no text.");
        return node.textValue();
    }
}
