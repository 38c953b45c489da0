export default function PaperStation() {
  return null;
}
