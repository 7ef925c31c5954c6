namespace StudioKit.Web.Results;

/// <summary>Designs as points over two measures, in units of a drawing whose upper left corner is 0, 0.</summary>
/// <param name="Width">Width of the drawing.</param>
/// <param name="Height">Its height.</param>
/// <param name="Said">What it shows, for somebody who does not see it.</param>
/// <param name="AcrossName">What is told across.</param>
/// <param name="UpName">What is told upwards.</param>
/// <param name="Points">The designs; the kit as it is written has the number 0.</param>
public sealed record DesignPicture(double Width, double Height, string Said, string AcrossName, string UpName, IReadOnlyList<DesignPoint> Points)
{
    /// <summary>Left, upper, right and lower edge of where points can be.</summary>
    public IReadOnlyList<double> Frame { get; init; } = [];

    /// <summary>Marks across.</summary>
    public IReadOnlyList<DesignTick> Across { get; init; } = [];

    /// <summary>Marks upwards.</summary>
    public IReadOnlyList<DesignTick> Up { get; init; } = [];
}
