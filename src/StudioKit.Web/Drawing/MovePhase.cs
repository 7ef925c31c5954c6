namespace StudioKit.Web.Drawing;

/// <summary>How far a move has come.</summary>
public enum MovePhase
{
    /// <summary>The hand still moves it.</summary>
    Moving,

    /// <summary>The hand has let go.</summary>
    Dropped,

    /// <summary>It was taken back.</summary>
    TakenBack,
}
