using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning;
using StudioKit.Planning.Studio;
using StudioKit.Web.Results;
using UnitsNet;

namespace StudioKit.Web.Engine.Telling;

/// <summary>A studio in space: right of the panel's middle, behind its front edge, over the ground.</summary>
internal static class SolidTelling
{
    public static SolidAnswer Of(Plan plan, PanelLightPlan light, string framing)
    {
        var views = light.Framings.FirstOrDefault(seen => seen.Framing == framing)?.Views.DistinctBy(view => view.Pitch).ToList() ?? [];
        var bars = plan.Frame is { } frame ? Bars(frame, light) : [];
        return new SolidAnswer(
            Said(light, bars.Count, string.Join(", ", views.Select(view => MeasureFormat.Degrees(view.Pitch)))),
            light.PanelWidth.Millimeters,
            [.. light.Section.Panel.Select(point => new Spot(point.FromFront.Millimeters, point.Up.Millimeters))],
            bars,
            [.. light.Flashes.Select(flash => Light(flash, light))],
            [.. views.Select(view => new SolidSight(Middle(view.Sight.Pupil), Middle(view.Sight.Aim)))],
            new Place(0, light.SubjectFromFront.Millimeters, light.PanelHeight.Millimeters));
    }

    private static string Said(PanelLightPlan light, int pipes, string angles)
    {
        var flashes = string.Join("; ", light.Flashes.Select(flash =>
            $"{flash.Flash} {PlanFormat.Millimetres(flash.Distance)} under it, {PlanFormat.Millimetres(flash.FromLeft)} from its left edge and {PlanFormat.Millimetres(flash.FromFront)} from its front edge"));
        return FormattableString.Invariant(
            $"Panel {PlanFormat.Rectangle(light.PanelWidth, light.PanelDepth)}, {PlanFormat.Millimetres(light.PanelHeight)} over the ground, on a frame of {pipes} pieces of pipe; {flashes}; camera in front at {angles} under the horizontal.");
    }

    private static SolidLight Light(FlashBelowPlan flash, PanelLightPlan light)
    {
        var right = (flash.FromLeft - (light.PanelWidth / 2)).Millimeters;
        return new SolidLight(flash.Flash, At(flash.Window[0], right), At(flash.Window[^1], right), flash.WindowWidth.Millimeters);
    }

    // The frame counts from under the middle of the flat part.
    private static IReadOnlyList<SolidBar> Bars(FramePlan frame, PanelLightPlan light)
    {
        var places = frame.Geometry.Joints.ToDictionary(joint => joint.Label, joint => Placed(joint.Position, light.FlatDepth / 2), StringComparer.Ordinal);
        return [.. frame.Geometry.Members.Select(member => new SolidBar(places[member.From], places[member.To], frame.PipeDiameter.Millimeters))];
    }

    private static Place Placed(FramePoint point, Length middle) => new(point.Right * 1000, (point.Back * 1000) + middle.Millimeters, point.Up * 1000);

    private static Place Middle(SidePoint point) => At(point, 0);

    private static Place At(SidePoint point, double right) => new(right, point.FromFront.Millimeters, point.Up.Millimeters);
}
