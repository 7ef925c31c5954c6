using UnitsNet;

namespace StudioKit.Planning.Session;

/// <summary>An upright sheet in a session.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Behind">Subject to sheet.</param>
/// <param name="WhereItGrows">Whether it goes up where the subject grows or sits, anew for each; else it stands on the studio.</param>
public sealed record SessionUpright(string Name, Length Behind, bool WhereItGrows);
