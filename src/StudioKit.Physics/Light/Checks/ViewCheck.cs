namespace StudioKit.Physics.Light.Checks;

/// <summary>Names what is impossible about one camera position.</summary>
internal static class ViewCheck
{
    public static IEnumerable<LightProblem> Problems(LightPanel panel, CameraView view)
    {
        LightProblem[] extent =
        [
            .. SceneCheck.Extent(
                ($"field width of {view.Name}", view.FieldWidth.Meters),
                ($"field height of {view.Name}", view.FieldHeight.Meters),
                ($"pupil distance of {view.Name}", view.PupilDistance.Meters)),
        ];
        return extent.Length > 0 ? extent : [.. Standing(view), .. Subject(panel, view)];
    }

    private static IEnumerable<LightProblem> Standing(CameraView view)
    {
        var pitch = view.Pitch.Degrees;
        var rise = view.SubjectHeight.Meters + (view.PupilDistance.Meters * Math.Sin(view.Pitch.Radians));
        return pitch is >= 0 and <= 90 && view.SubjectHeight.Meters >= 0 && rise > 0
            ? []
            : [new(LightProblemKind.CameraBelowPanel, FormattableString.Invariant(
                $"{view.Name}: with a pitch of {pitch:0.#}° the camera does not look down on the sheet from above it."))];
    }

    private static IEnumerable<LightProblem> Subject(LightPanel panel, CameraView view)
    {
        var surface = new PanelSurface(panel);
        var (x, y) = (view.SubjectRight.Meters, view.SubjectBack.Meters);
        return Math.Abs(x) <= surface.Width / 2 && y >= surface.FrontY && y <= surface.SweepStartY
            ? []
            : [new(LightProblemKind.SubjectOffPanel, FormattableString.Invariant(
                $"{view.Name}: the subject stands {1000 * x:0} mm right and {1000 * y:0} mm back of the panel's middle, off its flat part."))];
    }
}
