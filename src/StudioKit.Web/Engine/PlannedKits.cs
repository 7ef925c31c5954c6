using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Web.Engine.Telling;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine;

/// <summary>Plans kits as they change; what a change leaves alone is not worked out again.</summary>
/// <param name="progress">Told each stage.</param>
internal sealed class PlannedKits(IProgress<string> progress)
{
    private readonly PlanSession _session = new();

    /// <summary>Reads a kit and plans it.</summary>
    public PlanAnswer Answer(PlanRequest request)
    {
        var (read, plan) = Of(request.Text, request.FileName);
        return plan is null ? PlanTelling.Unread(read) : PlanTelling.Of(read, plan);
    }

    /// <summary>A kit as it was read, and its plan; none where it cannot be read.</summary>
    public (KitReadResult Read, Plan? Plan) Of(string text, string fileName)
    {
        var read = KitReader.Parse(text, fileName, PartsLibrary.Embedded);
        return (read, read.HasErrors ? null : _session.Plan(read, new Stages(progress)));
    }

    private sealed class Stages(IProgress<string> progress) : IProgress<PlanStage>
    {
        public void Report(PlanStage value) => progress.Report(StageWords.Of(value));
    }
}
