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
        var read = KitReader.Parse(request.Text, request.FileName, PartsLibrary.Embedded);
        return read.HasErrors ? PlanTelling.Unread(read) : PlanTelling.Of(read, _session.Plan(read, new Stages(progress)));
    }

    private sealed class Stages(IProgress<string> progress) : IProgress<PlanStage>
    {
        public void Report(PlanStage value) => progress.Report(StageWords.Of(value));
    }
}
