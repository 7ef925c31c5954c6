using StudioKit.Planning;

namespace StudioKit.Web.Engine.Telling;

/// <summary>What is being worked out, in a word or two.</summary>
internal static class StageWords
{
    public static string Of(PlanStage stage) => stage switch
    {
        PlanStage.Framings => "lenses",
        PlanStage.Panel => "panel",
        PlanStage.Frame => "frame",
        PlanStage.Light => "light",
        PlanStage.Exposures => "exposures",
        PlanStage.Pack => "pack",
        PlanStage.Session => "day",
        PlanStage.Checks => "checks",
        _ => throw new ArgumentOutOfRangeException(nameof(stage), stage, "Not a stage of a plan."),
    };
}
