using UnitsNet;

namespace StudioKit.Physics.Structure.Frames.Layout;

/// <summary>Cut lengths and labels of a skeleton's pipes.</summary>
internal static class MemberCuts
{
    // I, J and O are left out: they look like figures, and J labels joints.
    private const string Letters = "ABCDEFGHKLMNPQRSTUVWXYZ";

    /// <summary>One member a line, in the lines' order.</summary>
    public static IReadOnlyList<FrameMember> Of(Skeleton skeleton, FrameCase design)
    {
        var counts = new Dictionary<long, (string Letter, int Count)>();
        return [.. skeleton.Lines.Select(line => Member(skeleton, line, design, counts))];
    }

    private static FrameMember Member(
        Skeleton skeleton, SkeletonLine line, FrameCase design, Dictionary<long, (string Letter, int Count)> counts)
    {
        var from = design.Fittings.Of(skeleton.KindOf(line.From)).TakeOff;
        var to = design.Fittings.Of(skeleton.KindOf(line.To)).TakeOff;
        var centreLine = skeleton.LengthOf(line);
        var cut = centreLine - from.Meters - to.Meters - (2 * design.InsertionGap.Meters);
        var (letter, number) = Next(cut, counts);

        return new FrameMember(
            letter,
            number,
            line.Role,
            JointLabel.For(line.From),
            JointLabel.For(line.To),
            Length.FromMeters(centreLine),
            from,
            to,
            design.InsertionGap,
            Length.FromMeters(cut),
            line.Part,
            line.Parts);
    }

    // Pieces that agree to a hundredth of a millimetre share a letter.
    private static (string Letter, int Number) Next(double cut, Dictionary<long, (string Letter, int Count)> counts)
    {
        var key = (long)Math.Round(cut * 1e5);
        var (letter, count) = counts.TryGetValue(key, out var known) ? known : (LetterFor(counts.Count), 0);
        counts[key] = (letter, count + 1);
        return (letter, count + 1);
    }

    private static string LetterFor(int group) => group < Letters.Length
        ? Letters[group].ToString()
        : $"{Letters[(group / Letters.Length) - 1]}{Letters[group % Letters.Length]}";
}
