namespace StudioKit.Web.Results;

/// <summary>One of the kit's subjects.</summary>
/// <param name="Name">Its name.</param>
/// <param name="LengthMm">Its length in millimetres.</param>
/// <param name="Length">The same with its unit.</param>
/// <param name="HoldSeconds">Most time it is held, in seconds; 0 where it is not held at all.</param>
/// <param name="Hold">The same in words.</param>
public sealed record AnimalLine(string Name, double LengthMm, string Length, double HoldSeconds, string Hold);
