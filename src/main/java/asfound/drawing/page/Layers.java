package asfound.drawing.page;

import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * The layers of a document (optional content), and which are switched off when it is opened. ISO 32000-1, 8.11: groups,
 * memberships with their policy, and visibility expressions.
 */
final class Layers {

    private static final COSName GROUPS = COSName.getPDFName("OCGs");
    private static final COSName MEMBERSHIP = COSName.getPDFName("OCMD");
    private static final COSName EXPRESSION = COSName.getPDFName("VE");
    private static final COSName BASE = COSName.getPDFName("BaseState");
    /** An expression deeper or wider than this is made to be hostile; what it governs counts as shown. */
    private static final int DEEPEST = 4;

    private static final int WIDEST = 32;

    private final Set<COSBase> on;
    private final Set<COSBase> off;
    private final boolean allOff;
    private final Map<COSDictionary, Boolean> known = new IdentityHashMap<>();

    Layers(PDDocument document) {
        COSDictionary properties = document.getDocumentCatalog().getCOSObject().getCOSDictionary(COSName.OCPROPERTIES);
        COSDictionary usual = properties == null ? null : properties.getCOSDictionary(COSName.D);
        on = groups(usual, COSName.ON);
        off = groups(usual, COSName.OFF);
        allOff = usual != null && "OFF".equals(usual.getNameAsString(BASE));
    }

    private static Set<COSBase> groups(COSDictionary usual, COSName state) {
        Set<COSBase> all = new HashSet<>();
        COSArray listed = usual == null ? null : usual.getCOSArray(state);
        if (listed != null) members(listed).forEach(all::add);
        return all;
    }

    /** Whether what belongs to a group or a membership is not shown; null belongs to none. */
    boolean isOff(COSDictionary groupOrMembership) {
        return groupOrMembership != null && known.computeIfAbsent(groupOrMembership, this::findOff);
    }

    private boolean findOff(COSDictionary groupOrMembership) {
        if (!MEMBERSHIP.equals(groupOrMembership.getCOSName(COSName.TYPE))) return isGroupOff(groupOrMembership);
        COSArray expression = groupOrMembership.getCOSArray(EXPRESSION);
        return expression == null ? isMembershipOff(groupOrMembership) : !isShown(expression, 0);
    }

    private boolean isGroupOff(COSBase group) {
        return off.contains(group) || allOff && !on.contains(group);
    }

    private boolean isMembershipOff(COSDictionary membership) {
        COSBase groups = membership.getDictionaryObject(GROUPS);
        Set<COSBase> all = new HashSet<>();
        if (groups instanceof COSDictionary) all.add(groups);
        else if (groups instanceof COSArray list) members(list).forEach(all::add);
        if (all.isEmpty()) return false;
        boolean anyOff = all.stream().anyMatch(this::isGroupOff),
                anyOn = !all.stream().allMatch(this::isGroupOff);
        String policy = membership.getNameAsString(COSName.P, "AnyOn");
        return switch (policy.toUpperCase(Locale.ROOT)) {
            case "ALLON" -> anyOff;
            case "ANYOFF" -> !anyOff;
            case "ALLOFF" -> anyOn;
            default -> !anyOn;
        };
    }

    private boolean isShown(COSBase expression, int depth) {
        if (!(expression instanceof COSArray array)) return !isGroupOff(expression);
        if (depth > DEEPEST || array.size() > WIDEST) return true;
        Stream<COSBase> operands = members(array).skip(1);
        return switch (array.size() == 0 ? "" : String.valueOf(array.getName(0))) {
            case "And" -> operands.allMatch(o -> isShown(o, depth + 1));
            case "Or" -> operands.anyMatch(o -> isShown(o, depth + 1));
            case "Not" -> operands.noneMatch(o -> isShown(o, depth + 1));
            default -> true;
        };
    }

    private static Stream<COSBase> members(COSArray array) {
        return StreamSupport.stream(array.spliterator(), false)
                .map(o -> o instanceof COSObject reference ? reference.getObject() : o)
                .filter(o -> o != null);
    }
}
