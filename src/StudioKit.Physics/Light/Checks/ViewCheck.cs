namespace StudioKit.Physics.Light.Checks;

/// <summary>Names what is impossible about one camera position.</summary>
internal static class ViewCheck
{
    public static IEnumerable<LightProblem> Problems(LightPanel panel, CameraView view)
    {
        LightProblem[] extent =
        [
            .. SceneCheck.Extent(
                (LightQuantity.FieldWidth, view.FieldWidth.Meters),
                (LightQuantity.FieldHeight, view.FieldHeight.Meters),
                (LightQuantity.PupilDistance, view.PupilDistance.Meters)).Select(problem => problem with { View = view.Name }),
        ];
        return extent.Length > 0 ? extent : [.. Standing(view), .. Subject(panel, view)];
    }

    private static IEnumerable<LightProblem> Standing(CameraView view)
    {
        var pitch = view.Pitch.Degrees;
        var rise = view.SubjectHeight.Meters + (view.PupilDistance.Meters * Math.Sin(view.Pitch.Radians));
        return pitch is >= 0 and <= 180 && view.SubjectHeight.Meters >= 0 && rise > 0
            ? []
            : [new(LightProblemKind.CameraBelowPanel) { View = view.Name, Pitch = view.Pitch }];
    }

    private static IEnumerable<LightProblem> Subject(LightPanel panel, CameraView view)
    {
        var surface = new PanelSurface(panel);
        var (x, y) = (view.SubjectRight.Meters, view.SubjectBack.Meters);
        return Math.Abs(x) <= surface.Width / 2 && y >= surface.FrontY && y <= surface.SweepStartY
            ? []
            : [new(LightProblemKind.SubjectOffPanel) { View = view.Name, Right = view.SubjectRight, Back = view.SubjectBack }];
    }
}
