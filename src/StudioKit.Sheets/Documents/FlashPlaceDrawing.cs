using StudioKit.Planning;
using StudioKit.Planning.Studio;
using StudioKit.Sheets.Drawings;
using UnitsNet;

namespace StudioKit.Sheets.Documents;

/// <summary>Where to fix the flash, from above and dimensioned from the panel's edges; laid out at its size on paper.</summary>
internal static class FlashPlaceDrawing
{
    private const double RoomWidth = 120;
    private const double RoomHeight = 75;

    /// <summary>Draws the place of every flash below in one set-up.</summary>
    public static Drawing Of(PanelLightPlan light)
    {
        var (width, depth) = (light.PanelWidth.Millimeters, light.FlatDepth.Millimeters);
        var scale = PaperScale.Of(width, depth, RoomWidth, RoomHeight);
        Point At(double fromLeft, double fromFront) => new(fromLeft / scale, (depth - fromFront) / scale);
        var subject = At(width / 2, light.SubjectFromFront.Millimeters);
        return new Drawing(
            FormattableString.Invariant($"Where to fix the flash, from above, scale 1:{scale:0}"),
            $"Flat part of the panel with the flash windows under it: {string.Join("; ", light.Flashes.Select(Sentence))}",
            [
                Polygon.Rectangle(new Bounds(0, 0, width / scale, depth / scale), Stroke.Heavy),
                .. LightMapLegend.Subject(subject),
                new Label(subject.Plus(2.5, 2.5), "subject", 7),
                .. light.Flashes.SelectMany((flash, index) => Flash(flash, index, At, depth)),
                new Label(new Point(width / scale / 2, (depth / scale) - 2), "front, towards the camera", 7, TextAnchor.Middle),
                .. light.Flashes.Select(Sentence).Append(SubjectSentence(light)).Select((sentence, index) => new Label(
                    new Point(0, (depth / scale) + 13 + (7.5 * (light.Flashes.Count - 1)) + (4 * index)), sentence, 8)),
            ]);
    }

    private static string SubjectSentence(PanelLightPlan light) =>
        $"subject: foot {PlanFormat.Millimetres(light.SubjectFromFront)} from the front edge, midway between the sides";

    private static string Sentence(FlashBelowPlan flash)
    {
        var name = $"{(flash.Modifier is null ? flash.Flash : $"{flash.Flash} with {flash.Modifier}")}, {PlanFormat.Zoom(flash.Zoom)}";
        var tilt = flash.Tilt < Angle.FromDegrees(0.5) ? "facing straight up" : $"tilted {MeasureFormat.Degrees(flash.Tilt)} from straight up";
        return $"{name}: window {PlanFormat.Millimetres(flash.Distance)} under the panel, {PlanFormat.Millimetres(flash.OverGround)} over the ground, {tilt}";
    }

    // Further flashes get their dimensions further out, so that none lies over another.
    private static IEnumerable<Primitive> Flash(FlashBelowPlan flash, int index, Func<double, double, Point> at, double depth)
    {
        var (x, y) = (flash.FromLeft.Millimeters, flash.FromFront.Millimeters);
        var (w, h) = (flash.WindowWidth.Millimeters / 2, flash.WindowHeight.Millimeters / 2);
        var (from, to, middle) = (at(x - w, y + h), at(x + w, y - h), at(x, y));
        var out7 = 6 + (7.5 * index);
        yield return Polygon.Rectangle(new Bounds(from.X, from.Y, to.X, to.Y), Stroke.Hidden);
        yield return new Line(new Point(from.X - 3, middle.Y), new Point(to.X + 3, middle.Y), Stroke.Centre);
        yield return new Line(new Point(middle.X, from.Y - 3), new Point(middle.X, to.Y + 3), Stroke.Centre);
        yield return new Dimension(at(0, 0), at(x, 0), out7, PlanFormat.Millimetres(flash.FromLeft));
        yield return new Dimension(at(x, 0), at(x + flash.FromRight.Millimeters, 0), out7, PlanFormat.Millimetres(flash.FromRight));
        yield return new Dimension(at(0, y), at(0, 0), out7, PlanFormat.Millimetres(flash.FromFront));
        yield return new Dimension(at(0, depth), at(0, y), out7, PlanFormat.Millimetres(flash.FromBack));
    }
}
