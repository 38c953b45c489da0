export default function OrderStation() {
  return null;
}
