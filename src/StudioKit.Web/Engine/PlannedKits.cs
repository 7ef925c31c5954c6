using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Web.Engine.Telling;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine;

/// <summary>Plans kits as they change; what a change leaves alone is not worked out again.</summary>
/// <param name="progress">Told each stage.</param>
/// <param name="parts">Where their parts are looked up.</param>
internal sealed class PlannedKits(IProgress<string> progress, OwnParts parts)
{
    // As many as lie side by side, and the one before the last change.
    private const int Most = 4;

    private readonly PlanSession _session = new();
    private readonly List<PlannedKit> _kits = [];
    private Func<KitReadResult, KitReadResult> _corrected = read => read;

    /// <summary>Reads a kit and plans it.</summary>
    public PlanAnswer Answer(PlanRequest request)
    {
        var (read, plan) = Of(request.Text, request.FileName);
        return plan is null ? PlanTelling.Unread(read) : PlanTelling.Of(read, plan);
    }

    /// <summary>What a framing of a planned kit sees of the lit panel, place by place.</summary>
    public MapAnswer Map(MapRequest request)
    {
        var light = Find(request.Hash)?.Light(request.SetUp);
        var framing = light?.Framings.FirstOrDefault(seen => seen.Framing == request.Framing);
        return new MapAnswer(request.Hash, request.Framing, framing is null ? null : StudioTelling.Map(framing, light!));
    }

    /// <summary>A kit as it was read, and its plan; none where it cannot be read.</summary>
    public (KitReadResult Read, Plan? Plan) Of(string text, string fileName)
    {
        var read = KitReader.Parse(text, fileName, parts.Library);
        return (read, read.HasErrors ? null : PlanOf(_corrected(read)));
    }

    /// <summary>A kit that was planned lately; none where it was not.</summary>
    /// <param name="hash">Hash of its content.</param>
    public PlannedKit? Find(string hash) => _kits.Find(kit => kit.Plan.ContentHash == hash);

    // The same content has the same plan, with all the advice that was worked out for it.
    private PlannedKit Planned(KitReadResult read)
    {
        var planned = Find(read.ContentHash) ?? new PlannedKit(read, _session.Plan(read, new Stages(progress)));
        _kits.Remove(planned);
        _kits.Insert(0, planned);
        _kits.RemoveRange(Math.Min(Most, _kits.Count), Math.Max(0, _kits.Count - Most));
        return planned;
    }

    /// <summary>A kit as it was read, and its plan without any correction that was measured for it.</summary>
    public (KitReadResult Read, Plan? Plan) AsWritten(string text, string fileName)
    {
        var read = KitReader.Parse(text, fileName, parts.Library);
        return (read, read.HasErrors ? null : PlanOf(read));
    }

    /// <summary>The plan of a text that somebody only tries: nothing is told of it, and it takes no other's place.</summary>
    /// <returns>The plan; none where the text cannot be read.</returns>
    public Plan? Tried(string text, string fileName)
    {
        var read = KitReader.Parse(text, fileName, parts.Library);
        return read.HasErrors ? null : _session.Plan(_corrected(read));
    }

    /// <summary>How texts are read now, whatever parts lie beside the kit in hand later.</summary>
    /// <param name="fileName">Name of their file.</param>
    public Func<string, KitReadResult> Reader(string fileName)
    {
        var (library, corrected) = (parts.Library, _corrected);
        return text =>
        {
            var read = KitReader.Parse(text, fileName, library);
            return read.HasErrors ? read : corrected(read);
        };
    }

    /// <summary>The plan of a kit that was read without errors.</summary>
    public Plan PlanOf(KitReadResult read) => Planned(read).Plan;

    /// <summary>Plans with corrections from now on.</summary>
    /// <param name="corrected">Puts into a kit what was measured for it.</param>
    public void CorrectBy(Func<KitReadResult, KitReadResult> corrected) => _corrected = corrected;

    private sealed class Stages(IProgress<string> progress) : IProgress<PlanStage>
    {
        public void Report(PlanStage value) => progress.Report(StageWords.Of(value));
    }
}
