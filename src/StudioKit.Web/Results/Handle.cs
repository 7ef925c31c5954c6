namespace StudioKit.Web.Results;

/// <summary>Something of the studio that can be moved, with the value that it has.</summary>
/// <param name="Key">Path of the value in the kit.</param>
/// <param name="Kind">What is moved.</param>
/// <param name="Name">Its name in words.</param>
/// <param name="Value">The value, in millimetres or degrees.</param>
/// <param name="Least">The least it can be set to.</param>
/// <param name="Most">The most it can be set to.</param>
/// <param name="Step">What one press of a key changes.</param>
/// <param name="Unit">Its unit, as the kit writes it.</param>
/// <param name="Text">The value with its unit, as it is said.</param>
public sealed record Handle(string Key, HandleKind Kind, string Name, double Value, double Least, double Most, double Step, string Unit, string Text);
