namespace Fretloom.Hand;

/// <summary>Fingers as they are printed on the marks of a picture.</summary>
public static class FingerLabels
{
    /// <summary><c>1</c> to <c>4</c>, <c>T</c> for the thumb; empty for an open string, which is a hollow mark without a figure.</summary>
    public static string ToLabel(this Finger finger) =>
        finger switch
        {
            Finger.None => "",
            Finger.Index => "1",
            Finger.Middle => "2",
            Finger.Ring => "3",
            Finger.Little => "4",
            Finger.Thumb => "T",
            _ => throw new ArgumentOutOfRangeException(nameof(finger), finger, "There is no such finger."),
        };
}
