using System.Text;
using StudioKit.Kits;
using StudioKit.Kits.Editing;
using StudioKit.Kits.Exploring;
using StudioKit.Planning.Exploring;
using StudioKit.Web.Engine.Telling;
using StudioKit.Web.Results;
using StudioKit.Wording;

namespace StudioKit.Web.Engine;

/// <summary>What kits leave open, and the search among their designs: one at a time, a design in each step. The last one stays, so that the kits of its designs can be asked for.</summary>
/// <param name="plans">Where kits are read and planned.</param>
internal sealed class ExploredKits(PlannedKits plans)
{
    /// <summary>File name of the table of the designs found last.</summary>
    public const string TableName = "designs.csv";

    private const int MostMeasures = 4;

    private (DesignsRequest First, KitReadResult Read, IEnumerator<DesignSpaceReading?> Steps)? _opening;
    private OpenKit? _open;
    private (SearchRequest First, DesignSpaceReading Reading, DesignSearchSteps Steps)? _search;
    private (DesignSpace Space, DesignSearchResult? Result)? _last;
    private bool _isEnded;

    /// <summary>One step of reading what a kit leaves open.</summary>
    public OpenDesigns Open(DesignsRequest request)
    {
        var first = request with { Step = 0 };
        if (request.Step == 0 || _opening?.First != first)
        {
            _opening = null;
            var reader = plans.Reader(request.FileName);
            var read = reader(request.Text);
            if (read.Kit is null || read.HasErrors)
            {
                return new OpenDesigns(Unread, []);
            }

            if (IsOpen(first, read))
            {
                return DesignTelling.Of(read.Kit, _open!.Reading, _open.Own);
            }

            _opening = (first, read, DesignSpace.Steps(KitText.Of(request.Text), read, reader).GetEnumerator());
        }

        var (_, kit, steps) = _opening!.Value;
        if (steps.MoveNext() && steps.Current is null)
        {
            return new OpenDesigns("", []) { IsDone = false };
        }

        (_open, _opening) = (new OpenKit(first, kit, steps.Current!, FigureReader.Of(plans.PlanOf(kit), 0)), null);
        return DesignTelling.Of(kit.Kit!, _open.Reading, _open.Own);
    }

    /// <summary>One step of a search.</summary>
    public SearchAnswer Step(SearchRequest request)
    {
        var first = request with { Step = 0, IsLast = false };
        if (request.Step == 0 || _search is not { } search || !IsSame(search.First, first))
        {
            return Begin(first);
        }

        var (_, reading, steps) = search;
        if (!request.IsLast && !_isEnded && steps.Next())
        {
            return DesignTelling.Progress(steps.Progress, request.Most);
        }

        var result = steps.Result();
        (_last, _search) = ((result.Space, result), null);
        return new SearchAnswer(true, result.Count, result.Count, "") { Found = DesignTelling.Of(result, reading.IsUsual) };
    }

    /// <summary>The kit of a design of the last search.</summary>
    public DesignKit Kit(DesignRequest request) => _last is not { } last ? new DesignKit("", "Nothing was looked for yet.")
        : DesignCode.Read(request.Code, last.Space.Choices) is { } code && last.Space.TextOf(code) is { } text ? new DesignKit(text.Text, "")
        : new DesignKit("", "The options of this design do not go together.");

    /// <summary>Hands over the designs found last as a table.</summary>
    /// <param name="name">The table's file name.</param>
    /// <exception cref="ArgumentException">Nothing was found yet.</exception>
    public byte[] Take(string name) => _last?.Result is { } result ? Encoding.UTF8.GetBytes(DesignTable.Of(result)) : throw new ArgumentException($"No designs for '{name}' were found yet.", nameof(name));

    /// <summary>Ends a search that runs, as kits are read otherwise from now on; what it has found is told in its next step.</summary>
    public void End() => _isEnded = true;

    private static bool IsSame(SearchRequest one, SearchRequest other) =>
        (one.Text, one.FileName, one.Most) == (other.Text, other.FileName, other.Most) && one.Measures.SequenceEqual(other.Measures) && one.Limits.SequenceEqual(other.Limits);

    private static string Unread => "The kit's text cannot be read: put that right first.";

    private SearchAnswer Begin(SearchRequest request)
    {
        _search = null;
        if (Opened(new DesignsRequest(request.Text, request.FileName, 0)) is not { } open)
        {
            return Refused(Unread);
        }

        if (open.Reading.Space is not { } space)
        {
            return Refused("What the kit leaves open has faults: put them right first.");
        }

        var limits = request.Limits.Select(limit => (limit.Key, IsRead: DesignLimitText.TryRead($"{limit.Key} {limit.Text}", out var read, out var problem), Read: read, Problem: problem)).ToList();
        if (limits.Exists(limit => !limit.IsRead))
        {
            return Refused("A limit cannot be read.") with { Refused = [.. limits.Where(limit => !limit.IsRead).Select(limit => new FormValue(limit.Key, limit.Problem))] };
        }

        var aim = new DesignAim([.. request.Measures.Select(word => DesignLimitText.Measure(word, out _)).OfType<DesignMeasure>().Distinct()], [.. open.Read.Kit!.Explore?.Limits ?? [], .. limits.Select(limit => limit.Read!)]);
        if (WrongWith(aim, open.Own) is { Length: > 0 } wrong)
        {
            return Refused(wrong);
        }

        var steps = new DesignSearchSteps(space, aim, new DesignSearchOptions { Most = request.Most, InAStep = 1 });
        (_search, _last, _isEnded) = ((request, open.Reading, steps), (space, null), false);
        return DesignTelling.Progress(steps.Progress, request.Most);
    }

    private static string WrongWith(DesignAim aim, DesignFigures own) => aim.Measures.Count is < 1 or > MostMeasures
        ? "Designs are compared by two to four measures: tick so many."
        : aim.Measures.Concat(aim.Limits.Select(limit => limit.Measure)).Where(measure => own[measure] is null).Select(DesignText.Unknown).FirstOrDefault("");

    private static SearchAnswer Refused(string why) => new(true, 0, 0, why);

    // Reading each option by itself takes a while, so the last kit's are kept.
    private OpenKit? Opened(DesignsRequest request)
    {
        var reader = plans.Reader(request.FileName);
        var read = reader(request.Text);
        if (read.Kit is null || read.HasErrors)
        {
            return null;
        }

        if (!IsOpen(request, read))
        {
            _open = new OpenKit(request, read, DesignSpace.Of(KitText.Of(request.Text), read, reader), FigureReader.Of(plans.PlanOf(read), 0));
        }

        return _open;
    }

    private bool IsOpen(DesignsRequest first, KitReadResult read) => _open is { } open && open.First == first && open.Read.ContentHash == read.ContentHash;

    private sealed record OpenKit(DesignsRequest First, KitReadResult Read, DesignSpaceReading Reading, DesignFigures Own);
}
