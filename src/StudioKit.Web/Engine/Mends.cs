using StudioKit.Kits;
using StudioKit.Kits.Editing;
using StudioKit.Physics;
using StudioKit.Planning;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Mending;
using StudioKit.Web.Engine.Telling;
using StudioKit.Web.Results;
using StudioKit.Wording;

namespace StudioKit.Web.Engine;

/// <summary>Looks for changes that mend checks. What is offered was written into the text, read and planned as a whole before: the button does no more and no less.</summary>
/// <param name="plans">Where plans come from.</param>
internal sealed class Mends(PlannedKits plans)
{
    private (MendRequest First, Search Search)? _search;

    /// <summary>One step of a search.</summary>
    public MendAnswer Answer(MendRequest request)
    {
        var first = request with { Step = 0 };
        if (request.Step == 0 || _search?.First != first)
        {
            _search = Begin(first) is { } begun ? (first, begun) : null;
        }

        if (_search?.Search is not { } search || !search.Steps.MoveNext())
        {
            return new MendAnswer(request.Check, true, "", "", "");
        }

        return search.Steps.Current is { } mend && MendedText.Of(search.Text, mend.Changes, search.Kit) is { } text
            ? new MendAnswer(request.Check, true, MendText.Of(mend.Changes, search.Kit), Note(mend), text.Text)
            : new MendAnswer(request.Check, false, "", "", "");
    }

    private Search? Begin(MendRequest request)
    {
        var (read, plan) = plans.Of(request.Text, request.FileName);
        if (plan?.Checks.FirstOrDefault(check => CheckTelling.Id(check) == request.Check) is not { } check)
        {
            return null;
        }

        var (text, kit) = (KitText.Of(request.Text), read.Kit!);
        var mender = new CheckMender(plan, changes => Again(text, changes, kit, request.FileName));
        return new Search(text, kit, mender.Steps(check).GetEnumerator());
    }

    private Plan? Again(KitText text, ValueList<KitChange> changes, KitSpec kit, string fileName) =>
        MendedText.Of(text, changes, kit) is { } changed ? plans.Tried(changed.Text, fileName) : null;

    private static string Note(CheckMend mend) => mend.Breaks.Count == 0
        ? ""
        : $"Then {string.Join(" and ", mend.Breaks.Select(CheckText.Name).Distinct(StringComparer.Ordinal))} {(mend.Breaks.Count == 1 ? "fails" : "fail")}.";

    private sealed record Search(KitText Text, KitSpec Kit, IEnumerator<CheckMend?> Steps);
}
