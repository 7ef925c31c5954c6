namespace StudioKit.Physics.Light.Views;

/// <summary>A rectangle of the sheet, counted from the subject's foot [m].</summary>
internal readonly record struct PanelExtent(double Left, double Right, double Front, double Back)
{
    /// <summary>The rectangle round where all rays meet the sheet, the subject's foot included; none where one misses it.</summary>
    public static PanelExtent? Of(
        IReadOnlyList<SheetRay> rays, Func<SheetRay, (double X, double S)?> meet)
    {
        var extent = default(PanelExtent);
        foreach (var ray in rays)
        {
            if (meet(ray) is not { } place)
            {
                return null;
            }

            extent = new PanelExtent(
                Math.Min(extent.Left, place.X), Math.Max(extent.Right, place.X), Math.Min(extent.Front, place.S), Math.Max(extent.Back, place.S));
        }

        return extent;
    }
}
