namespace StudioKit.Sheets.Layout;

/// <summary>A part of a sheet that knows how to fill the room it is given, and what is left over.</summary>
internal abstract record Block
{
    /// <summary>Fills as much of the room as it can.</summary>
    /// <param name="width">Width of the room [mm].</param>
    /// <param name="height">Height of the room [mm]; infinite to learn how tall the block is.</param>
    /// <returns>What was filled, from the room's upper left corner, and what is left for the next page.</returns>
    public abstract Fit Fit(double width, double height);

    /// <summary>How wide it is, where that does not depend on the room [mm].</summary>
    public virtual double? Breadth => null;

    /// <summary>Fills a whole page by breaking what is otherwise kept whole; asked for only where <see cref="Fit"/> found an empty page too small.</summary>
    public virtual Fit Force(double width, double height) => Fit(width, height);
}
